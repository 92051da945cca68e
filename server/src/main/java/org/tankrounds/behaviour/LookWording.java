package org.tankrounds.behaviour;

import java.util.List;
import java.util.stream.Collectors;
import org.tankrounds.fish.Stage;

/** What a class saw of its fish, in words. What to do about it is common practice, no source. */
public final class LookWording {
    private LookWording() {}

    public static String label(Behaviour behaviour) {
        return switch (behaviour) {
            case SWIMMING -> "They swim";
            case GATHERING -> "They stay";
            case BREATHING -> "They breathe";
            case COLOUR -> "Their colour is";
            case APPETITE -> "They eat";
            case SHADOW -> "When a hand’s shadow falls on them";
        };
    }

    /** Beside its label. */
    public static String choice(Seen seen) {
        return switch (seen) {
            case CALM -> "calmly";
            case RESTLESS -> "darting, jumping";
            case LYING -> "little: they lie still";
            case ROLLING -> "on their side, in spirals";
            case SPREAD -> "all over the tank";
            case BOTTOM -> "near the bottom";
            case SURFACE -> "at the surface";
            case CORNERS -> "crowded in a corner";
            case EVEN -> "evenly";
            case FAST -> "fast";
            case GASPING -> "gasping at the surface";
            case USUAL -> "as ever";
            case DARK -> "darker";
            case PALE -> "paler, in patches";
            case EAGER -> "at once";
            case SLOW -> "slowly";
            case REFUSING -> "nothing";
            case UNFED -> "not fed today";
            case DARTING -> "they dart away";
            case LATE -> "they move late";
            case STILL -> "they stay";
        };
    }

    /** By itself. */
    private static String alone(Seen seen) {
        return switch (seen) {
            case CALM -> "swimming calmly";
            case RESTLESS -> "darting about";
            case LYING -> "lying still";
            case ROLLING -> "rolling on their side";
            case SPREAD -> "all over the tank";
            case BOTTOM -> "near the bottom";
            case SURFACE -> "at the surface";
            case CORNERS -> "crowded in a corner";
            case EVEN -> "breathing evenly";
            case FAST -> "breathing fast";
            case GASPING -> "gasping at the surface";
            case USUAL -> "coloured as ever";
            case DARK -> "darker than usual";
            case PALE -> "pale in patches";
            case EAGER -> "eating at once";
            case SLOW -> "eating slowly";
            case REFUSING -> "not eating";
            case UNFED -> "not fed";
            case DARTING -> "quick to flee";
            case LATE -> "slow to flee";
            case STILL -> "not fleeing";
        };
    }

    public static String list(List<Seen> seen) {
        return seen.stream().map(LookWording::alone).collect(Collectors.joining(", "));
    }

    /** What to do about a look now; empty where nothing. */
    public static String advice(Look look, Stage stage) {
        if (look.alarm(stage) == Alarm.ACT) {
            return "Tell an adult now. More air and no feed; read temperature, pH, ammonia and nitrite and put them in:"
                    + " the forecast then says what else to do. Your coordinator sees what you saw.";
        }
        return look.alarm(stage) == Alarm.WATCH
                ? "Look again before you go home. If it stays so, read the water and tell your coordinator." : "";
    }
}
