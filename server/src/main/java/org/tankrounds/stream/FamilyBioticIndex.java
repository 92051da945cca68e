package org.tankrounds.stream;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * Family biotic index of a sample: {@code FBI = Σ(n · t) / N}, n animals of a family of tolerance t, N of all of them;
 * from 0 (clean) to 10 (foul).
 *
 * <p>Source: Hilsenhoff 1988, J. N. Am. Benthol. Soc. 7:65–68: arthropods only, best of 100 animals or more. By its own
 * abstract it reads too polluted in clean streams, and too clean in polluted ones. Its classes are those of that paper,
 * not those of the index of genera and species, which are often put beside it.
 *
 * @param tolerances Σ(n · t)
 * @param animals N: what no family is known of is not among them
 */
public record FamilyBioticIndex(int tolerances, int animals) {

    /** Fewer animals than this make the index a rough one. */
    public static final int ENOUGH_ANIMALS = 100;

    /** What the index tells of organic pollution; the highest value of each to two decimals (from memory). */
    public enum Water {
        EXCELLENT(375), VERY_GOOD(425), GOOD(500), FAIR(575), FAIRLY_POOR(650), POOR(725), VERY_POOR(1000);

        private final int upToHundredths;

        Water(int upToHundredths) {
            this.upToHundredths = upToHundredths;
        }

        /** The highest index of the class. */
        public double upTo() {
            return upToHundredths / 100.0;
        }
    }

    public FamilyBioticIndex {
        if (animals < 1 || tolerances < 0 || tolerances > 10L * animals) {
            throw new IllegalArgumentException("no index of " + animals + " animals and " + tolerances);
        }
    }

    /** As in 1988, of arthropods only; empty where the sample has none. */
    public static Optional<FamilyBioticIndex> of(Map<Family, Integer> counts) {
        Map<Family, Integer> arthropods = new EnumMap<>(Family.class);
        counts.forEach((family, animals) -> {
            if (family.order().isArthropod()) {
                arthropods.put(family, animals);
            }
        });
        return withLaterGroups(arthropods);
    }

    /** With worms, leeches, snails, clams and flatworms, as later authors did; its classes were not made for that. */
    public static Optional<FamilyBioticIndex> withLaterGroups(Map<Family, Integer> counts) {
        int tolerances = 0;
        int animals = 0;
        for (Map.Entry<Family, Integer> count : counts.entrySet()) {
            if (count.getValue() < 0) {
                throw new IllegalArgumentException("a count must be at least 0, was " + count.getValue());
            }
            tolerances = Math.addExact(tolerances,
                    Math.multiplyExact(count.getValue(), count.getKey().tolerance()));
            animals = Math.addExact(animals, count.getValue());
        }
        return animals == 0 ? Optional.empty() : Optional.of(new FamilyBioticIndex(tolerances, animals));
    }

    public double value() {
        return (double) tolerances / animals;
    }

    /** By the index to two decimals, as the classes are written. */
    public Water water() {
        long hundredths = (200L * tolerances + animals) / (2L * animals);
        for (Water water : Water.values()) {
            if (hundredths <= water.upToHundredths) {
                return water;
            }
        }
        throw new IllegalStateException("above 10: " + value());
    }

    public boolean isOfEnoughAnimals() {
        return animals >= ENOUGH_ANIMALS;
    }
}
