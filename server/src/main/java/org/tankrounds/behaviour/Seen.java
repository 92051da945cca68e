package org.tankrounds.behaviour;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.fish.Stage;

/**
 * One way for a behaviour to be. What it asks for is common practice, no source: gasping and rolling are signs of water
 * that chokes or poisons, the others of fish that are not well, for many reasons.
 */
public enum Seen {
    CALM(Behaviour.SWIMMING, Alarm.NONE),
    RESTLESS(Behaviour.SWIMMING, Alarm.WATCH),
    /** What sac fry do all day. */
    LYING(Behaviour.SWIMMING, Alarm.NONE, Alarm.WATCH),
    ROLLING(Behaviour.SWIMMING, Alarm.ACT),
    SPREAD(Behaviour.GATHERING, Alarm.NONE),
    BOTTOM(Behaviour.GATHERING, Alarm.NONE),
    SURFACE(Behaviour.GATHERING, Alarm.WATCH),
    /** Sac fry flee the light together. */
    CORNERS(Behaviour.GATHERING, Alarm.NONE, Alarm.WATCH),
    EVEN(Behaviour.BREATHING, Alarm.NONE),
    FAST(Behaviour.BREATHING, Alarm.WATCH),
    GASPING(Behaviour.BREATHING, Alarm.ACT),
    USUAL(Behaviour.COLOUR, Alarm.NONE),
    DARK(Behaviour.COLOUR, Alarm.WATCH),
    PALE(Behaviour.COLOUR, Alarm.WATCH),
    EAGER(Behaviour.APPETITE, Alarm.NONE),
    SLOW(Behaviour.APPETITE, Alarm.WATCH),
    REFUSING(Behaviour.APPETITE, Alarm.WATCH),
    UNFED(Behaviour.APPETITE, Alarm.NONE),
    DARTING(Behaviour.SHADOW, Alarm.NONE),
    LATE(Behaviour.SHADOW, Alarm.WATCH),
    STILL(Behaviour.SHADOW, Alarm.WATCH);

    private final Behaviour behaviour;
    private final Alarm asSacFry;
    private final Alarm asFish;

    Seen(Behaviour behaviour, Alarm alarm) {
        this(behaviour, alarm, alarm);
    }

    Seen(Behaviour behaviour, Alarm asSacFry, Alarm asFish) {
        this.behaviour = behaviour;
        this.asSacFry = asSacFry;
        this.asFish = asFish;
    }

    public Behaviour behaviour() {
        return behaviour;
    }

    public Alarm alarm(Stage stage) {
        return stage.isBeforeFirstFeeding() ? asSacFry : asFish;
    }

    /** Whatever their stage. */
    boolean isGrave() {
        return asSacFry == Alarm.ACT && asFish == Alarm.ACT;
    }

    /** As forms and the database write it. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Seen> ofCode(String code) {
        return Arrays.stream(values()).filter(seen -> seen.code().equals(code)).findFirst();
    }
}
