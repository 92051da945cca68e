package org.tankrounds.stream;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * What the tally sheet of a stream check tells apart. Where a family can be seen by the bank it stands for one;
 * "another" of an order, and what nobody can name, counts as a kind or as nothing, and in no index of families.
 */
public enum StreamGroup {
    GIANT_STONEFLY(Family.PTERONARCYIDAE, Kind.STONEFLY),
    GOLDEN_STONEFLY(Family.PERLIDAE, Kind.STONEFLY),
    STONEFLY_UNSURE(null, Kind.STONEFLY),

    FLAT_MAYFLY(Family.HEPTAGENIIDAE, Kind.MAYFLY),
    SWIMMING_MAYFLY(Family.BAETIDAE, Kind.MAYFLY),
    CRAWLING_MAYFLY(Family.EPHEMERELLIDAE, Kind.MAYFLY),
    PLATED_MAYFLY(Family.CAENIDAE, Kind.MAYFLY),
    MAYFLY_UNSURE(null, Kind.MAYFLY),

    NET_CADDIS(Family.HYDROPSYCHIDAE, Kind.NET_SPINNER),
    ROAMING_CADDIS(Family.RHYACOPHILIDAE, Kind.CADDISFLY),
    SADDLE_CADDIS(Family.GLOSSOSOMATIDAE, Kind.CADDISFLY),
    SQUARE_CADDIS(Family.BRACHYCENTRIDAE, Kind.CADDISFLY),
    STICK_CADDIS(Family.LIMNEPHILIDAE, Kind.CADDISFLY),
    CADDIS_UNSURE(null, Kind.CADDISFLY),

    WATER_PENNY(Family.PSEPHENIDAE, Kind.WATER_PENNY),
    RIFFLE_BEETLE(Family.ELMIDAE, Kind.RIFFLE_BEETLE),
    DOBSONFLY(Family.CORYDALIDAE, Kind.DOBSONFLY),
    ALDERFLY(Family.SIALIDAE, Kind.ALDERFLY),
    DRAGONFLY(null, Kind.DRAGONFLY),
    DAMSELFLY(null, Kind.DAMSELFLY),

    CRANE_FLY(Family.TIPULIDAE, Kind.CRANE_FLY),
    SNIPE_FLY(Family.ATHERICIDAE, Kind.SNIPE_FLY),
    BLACK_FLY(Family.SIMULIIDAE, Kind.BLACK_FLY),
    MIDGE(Family.CHIRONOMIDAE, Kind.MIDGE),
    RED_MIDGE(Family.CHIRONOMIDAE_RED, Kind.MIDGE),

    SCUD(Family.GAMMARIDAE, Kind.SCUD),
    SOWBUG(Family.ASELLIDAE, Kind.SOWBUG),
    CRAYFISH(null, Kind.CRAYFISH),

    GILLED_SNAIL(null, Kind.GILLED_SNAIL),
    POUCH_SNAIL(Family.PHYSIDAE, Kind.POUCH_SNAIL),
    CLAM(Family.SPHAERIIDAE, Kind.CLAM),
    WORM(Family.OLIGOCHAETA, Kind.WORM),
    LEECH(Family.HIRUDINEA, Kind.LEECH),

    /** Not even the kind is known. */
    UNKNOWN(null, null);

    private final Optional<Family> family;
    private final Optional<Kind> kind;

    StreamGroup(Family family, Kind kind) {
        this.family = Optional.ofNullable(family);
        this.kind = Optional.ofNullable(kind);
    }

    /** Empty where the sheet cannot tell it. */
    public Optional<Family> family() {
        return family;
    }

    public Optional<Kind> kind() {
        return kind;
    }

    /** In forms and the database. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<StreamGroup> ofCode(String code) {
        return Arrays.stream(values()).filter(group -> group.code().equals(code)).findFirst();
    }
}
