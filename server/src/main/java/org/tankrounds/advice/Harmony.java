package org.tankrounds.advice;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tankrounds.forecast.Driver;

/**
 * No act of a list speaks against another: what is said to be left is left; what was found harmless outranks the
 * word that nothing is; and what is good only after another stands after it, or not at all.
 */
final class Harmony {

    private static final Set<Act.Kind> NO_CHANGE = EnumSet.of(Act.Kind.LEAVE_WATER, Act.Kind.TEST_WATER_FIRST);
    private static final Set<Act.Kind> BRING_ALKALINITY = EnumSet.of(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE);
    /** After these words salt waits for what the next reading allows. */
    private static final Set<Act.Kind> WORDS = EnumSet.of(Act.Kind.LEAVE_ALKALINITY, Act.Kind.LEAVE_WATER);

    private Harmony() {
    }

    static List<Tried> of(List<Tried> acts) {
        List<Tried> kept = acts;
        if (hasAny(kept, NO_CHANGE)) {
            kept = without(kept, each -> kind(each) == Act.Kind.WATER_CHANGE);
        }
        if (hasAny(kept, EnumSet.of(Act.Kind.LEAVE_WATER))) {
            kept = without(kept, each -> kind(each) == Act.Kind.BICARBONATE);
        }
        Set<Act.Kind> kinds = kinds(kept);
        kept = without(kept, each -> !kinds.containsAll(each.proposal().leansOn()));
        if (hasAny(kept, BRING_ALKALINITY)) {
            kept = without(kept, each -> kind(each) == Act.Kind.LEAVE_ALKALINITY);
        } else if (!hasAny(kept, WORDS)) {
            kept = without(kept, Harmony::isSaltBeforeAlkalinity);
        }
        if (hasAny(kept, EnumSet.of(Act.Kind.LEAVE_ALKALINITY))) {
            kept = without(kept, Harmony::isAirNotForBreath);
        }
        return saltFirst(kept);
    }

    /** It lifts the pH. */
    private static boolean isAirNotForBreath(Tried each) {
        return kind(each) == Act.Kind.MORE_AIR && !each.proposal().isForBreath();
    }

    private static boolean isSaltBeforeAlkalinity(Tried each) {
        return kind(each) == Act.Kind.SALT && each.proposal().act().isAgainst(Driver.PH);
    }

    /** What leans on salt follows it at once. */
    private static List<Tried> saltFirst(List<Tried> acts) {
        List<Tried> ordered = new ArrayList<>(without(acts, Harmony::isAfterSalt));
        int salt = ordered.stream().map(Harmony::kind).toList().indexOf(Act.Kind.SALT);
        ordered.addAll(salt + 1, acts.stream().filter(Harmony::isAfterSalt).toList());
        return ordered;
    }

    private static boolean isAfterSalt(Tried each) {
        return each.proposal().leansOn().contains(Act.Kind.SALT);
    }

    private static List<Tried> without(List<Tried> acts, Predicate<Tried> which) {
        return acts.stream().filter(which.negate()).toList();
    }

    private static boolean hasAny(List<Tried> acts, Set<Act.Kind> kinds) {
        return acts.stream().map(Harmony::kind).anyMatch(kinds::contains);
    }

    private static Set<Act.Kind> kinds(List<Tried> acts) {
        return acts.stream().map(Harmony::kind).collect(Collectors.toSet());
    }

    private static Act.Kind kind(Tried each) {
        return each.proposal().act().kind();
    }
}
