package org.tankrounds.stream;

import static org.tankrounds.stream.Order.ANNELIDA;
import static org.tankrounds.stream.Order.COLEOPTERA;
import static org.tankrounds.stream.Order.CRUSTACEA;
import static org.tankrounds.stream.Order.DIPTERA;
import static org.tankrounds.stream.Order.EPHEMEROPTERA;
import static org.tankrounds.stream.Order.MEGALOPTERA;
import static org.tankrounds.stream.Order.MOLLUSCA;
import static org.tankrounds.stream.Order.ODONATA;
import static org.tankrounds.stream.Order.PLECOPTERA;
import static org.tankrounds.stream.Order.TRICHOPTERA;

/**
 * Families with what they bear of organic pollution, from 0 (none) to 10 (most).
 *
 * <p>Source: Hilsenhoff 1988, J. N. Am. Benthol. Soc. 7:65–68, doi:10.2307/1467832, as copied by an open package of R
 * that cites it and the bioassessment manuals of the US EPA. Those after the arthropods were added later by others.
 */
public enum Family {
    CAPNIIDAE(PLECOPTERA, 1),
    CHLOROPERLIDAE(PLECOPTERA, 1),
    LEUCTRIDAE(PLECOPTERA, 0),
    NEMOURIDAE(PLECOPTERA, 2),
    PERLIDAE(PLECOPTERA, 1),
    PERLODIDAE(PLECOPTERA, 2),
    PTERONARCYIDAE(PLECOPTERA, 0),
    TAENIOPTERYGIDAE(PLECOPTERA, 2),

    BAETIDAE(EPHEMEROPTERA, 4),
    /** Some copies have 4. */
    BAETISCIDAE(EPHEMEROPTERA, 3),
    CAENIDAE(EPHEMEROPTERA, 7),
    EPHEMERELLIDAE(EPHEMEROPTERA, 1),
    EPHEMERIDAE(EPHEMEROPTERA, 4),
    HEPTAGENIIDAE(EPHEMEROPTERA, 4),
    LEPTOPHLEBIIDAE(EPHEMEROPTERA, 2),
    METRETOPODIDAE(EPHEMEROPTERA, 2),
    OLIGONEURIIDAE(EPHEMEROPTERA, 2),
    POLYMITARCYIDAE(EPHEMEROPTERA, 2),
    POTAMANTHIDAE(EPHEMEROPTERA, 4),
    SIPHLONURIDAE(EPHEMEROPTERA, 7),
    TRICORYTHIDAE(EPHEMEROPTERA, 4),

    BRACHYCENTRIDAE(TRICHOPTERA, 1),
    /** The package has 1, other copies 0. */
    GLOSSOSOMATIDAE(TRICHOPTERA, 0),
    HELICOPSYCHIDAE(TRICHOPTERA, 3),
    HYDROPSYCHIDAE(TRICHOPTERA, 4),
    HYDROPTILIDAE(TRICHOPTERA, 4),
    LEPIDOSTOMATIDAE(TRICHOPTERA, 1),
    LEPTOCERIDAE(TRICHOPTERA, 4),
    LIMNEPHILIDAE(TRICHOPTERA, 4),
    MOLANNIDAE(TRICHOPTERA, 6),
    ODONTOCERIDAE(TRICHOPTERA, 0),
    PHILOPOTAMIDAE(TRICHOPTERA, 3),
    PHRYGANEIDAE(TRICHOPTERA, 4),
    POLYCENTROPODIDAE(TRICHOPTERA, 6),
    PSYCHOMYIIDAE(TRICHOPTERA, 2),
    RHYACOPHILIDAE(TRICHOPTERA, 0),
    SERICOSTOMATIDAE(TRICHOPTERA, 3),

    AESHNIDAE(ODONATA, 3),
    CALOPTERYGIDAE(ODONATA, 5),
    COENAGRIONIDAE(ODONATA, 9),
    CORDULEGASTRIDAE(ODONATA, 3),
    CORDULIIDAE(ODONATA, 5),
    GOMPHIDAE(ODONATA, 1),
    LESTIDAE(ODONATA, 9),
    LIBELLULIDAE(ODONATA, 9),
    MACROMIIDAE(ODONATA, 3),

    CORYDALIDAE(MEGALOPTERA, 0),
    SIALIDAE(MEGALOPTERA, 4),

    DRYOPIDAE(COLEOPTERA, 5),
    ELMIDAE(COLEOPTERA, 4),
    PSEPHENIDAE(COLEOPTERA, 4),

    ATHERICIDAE(DIPTERA, 2),
    BLEPHARICERIDAE(DIPTERA, 0),
    CERATOPOGONIDAE(DIPTERA, 6),
    /** Midge larvae that are blood-red. */
    CHIRONOMIDAE_RED(DIPTERA, 8),
    /** All other midge larvae. */
    CHIRONOMIDAE(DIPTERA, 6),
    DOLICHOPODIDAE(DIPTERA, 4),
    EMPIDIDAE(DIPTERA, 6),
    EPHYDRIDAE(DIPTERA, 6),
    MUSCIDAE(DIPTERA, 6),
    PSYCHODIDAE(DIPTERA, 10),
    SIMULIIDAE(DIPTERA, 6),
    SYRPHIDAE(DIPTERA, 10),
    TABANIDAE(DIPTERA, 6),
    TIPULIDAE(DIPTERA, 3),

    GAMMARIDAE(CRUSTACEA, 4),
    /** With Hyalellidae. */
    TALITRIDAE(CRUSTACEA, 8),
    ASELLIDAE(CRUSTACEA, 8),

    OLIGOCHAETA(ANNELIDA, 8),
    HIRUDINEA(ANNELIDA, 10),
    PHYSIDAE(MOLLUSCA, 8),
    LYMNAEIDAE(MOLLUSCA, 6),
    /** 6 to 8 by author; 8 is taken, so that no stream looks cleaner for it. */
    SPHAERIIDAE(MOLLUSCA, 8),
    TURBELLARIA(Order.TURBELLARIA, 4);

    private final Order order;
    private final int tolerance;

    Family(Order order, int tolerance) {
        this.order = order;
        this.tolerance = tolerance;
    }

    public Order order() {
        return order;
    }

    /** 0 to 10. */
    public int tolerance() {
        return tolerance;
    }
}
