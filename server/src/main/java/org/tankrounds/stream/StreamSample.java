package org.tankrounds.stream;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The animals of one stream check as tallied, and what they come to. */
public final class StreamSample {
    private final Map<StreamGroup, Integer> counts = new EnumMap<>(StreamGroup.class);
    private final Map<Family, Integer> families = new EnumMap<>(Family.class);
    private final Map<Kind, Integer> kinds = new EnumMap<>(Kind.class);

    /** @param counts groups that were not found may be missing, or have 0 */
    public StreamSample(Map<StreamGroup, Integer> counts) {
        counts.forEach((group, animals) -> {
            if (animals < 0) {
                throw new IllegalArgumentException("a count must be at least 0, was " + animals);
            }
            if (animals > 0) {
                this.counts.put(group, animals);
                group.family().ifPresent(family -> families.merge(family, animals, Math::addExact));
                group.kind().ifPresent(kind -> kinds.merge(kind, animals, Math::addExact));
            }
        });
    }

    /** Of those found, in the order of the sheet. */
    public Map<StreamGroup, Integer> counts() {
        return new EnumMap<>(counts);
    }

    public int animals() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Animals whose family nobody could tell: counted, and in no index of families. */
    public int withoutFamily() {
        return animals() - families.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Groups that the index of 1988 leaves out, with their animals: no family, or no arthropods. */
    public Map<StreamGroup, Integer> outsideIndex() {
        Map<StreamGroup, Integer> outside = new EnumMap<>(StreamGroup.class);
        counts.forEach((group, animals) -> {
            if (group.family().filter(family -> family.order().isArthropod()).isEmpty()) {
                outside.put(group, animals);
            }
        });
        return outside;
    }

    public Optional<FamilyBioticIndex> index() {
        return FamilyBioticIndex.of(families);
    }

    public Optional<FamilyBioticIndex> indexWithLaterGroups() {
        return FamilyBioticIndex.withLaterGroups(families);
    }

    /** EPT richness: families of mayflies, stoneflies and caddisflies that could be told. */
    public int eptFamilies() {
        return eptFamilies(families);
    }

    static int eptFamilies(Map<Family, Integer> counts) {
        return (int) counts.entrySet().stream()
                .filter(count -> count.getValue() > 0 && count.getKey().order().isEpt()).count();
    }

    public KindCount kindCount() {
        return KindCount.of(kinds.keySet());
    }

    public GroupScore groupScore() {
        return GroupScore.of(kinds);
    }
}
