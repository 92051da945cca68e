package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.advice.Act;

/**
 * The 72 hours after a moment of a tank's life, to be played again and again: the weather, the breakages and
 * the class's luck are the same for the same hour and purpose, whatever was done.
 */
final class Morning {

    private static final int HORIZON_HOURS = 72;

    private final TankLife life;
    private final int from;
    private final long seed;
    private final double holdC;
    /** What the class does by hour where nobody steps in. */
    private final List<List<Handling>> asItGoes = new ArrayList<>();
    private final Came without;

    /** @param holdC what ice is to hold, °C */
    Morning(TankLife life, int from, double holdC, long seed) {
        this.life = life;
        this.from = from;
        this.seed = seed;
        this.holdC = holdC;
        without = played(List.of(), (copy, hour) -> {
            copy.pass(hour);
            asItGoes.add(copy.schoolClass().done());
        });
    }

    /** Nobody steps in. */
    Came without() {
        return without;
    }

    /** The acts are done, and the class then sees to the tank by what it reads. */
    Came with(List<Act> acts) {
        return played(acts, TankLife::pass);
    }

    /** The acts are done, and the class does what it would have done without them. */
    Came withThoseAlone(List<Act> acts) {
        return played(acts, (copy, hour) -> copy.passHandled(hour, asItGoes.get(hour - from)));
    }

    /** The class changes so much more than it would have, whatever is advised. @param share of the water */
    Came afterChange(double share) {
        return withThoseAlone(List.of(new Act(Act.Kind.WATER_CHANGE, Optional.empty(),
                OptionalDouble.of(100 * share), "%", OptionalDouble.empty(), "", "", "")));
    }

    /** How an hour passes. */
    private interface Hour {
        void pass(TankLife copy, int hour);
    }

    private Came played(List<Act> acts, Hour hourly) {
        Luck watersLuck = new Luck(0);
        Luck classesLuck = new Luck(0);
        TankLife copy = life.copy(watersLuck, classesLuck);
        Helper helper = new Helper(acts, holdC);
        Came came = new Came();
        for (int hour = from; hour < from + HORIZON_HOURS; hour++) {
            came.add(copy.water());
            watersLuck.beginAnew(seed, 2 * hour);
            classesLuck.beginAnew(seed, 2 * hour + 1);
            helper.pass(copy, hour, hour - from);
            hourly.pass(copy, hour);
        }
        return came;
    }
}
