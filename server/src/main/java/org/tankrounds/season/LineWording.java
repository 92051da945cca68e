package org.tankrounds.season;

import java.util.Map;
import java.util.Optional;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Speech;

/** What a line of a tank's account tells, in words. */
public final class LineWording {
    private final Map<Integer, Tank> tanks;
    private final Speech speech;

    /** @param tanks of the chapter by number, to name where moved fish came from and went */
    public LineWording(Map<Integer, Tank> tanks, Speech speech) {
        this.tanks = tanks;
        this.speech = speech;
    }

    public String what(Account.Line line) {
        return switch (line.what()) {
            case RECEIVED -> speech.say("count.line.received");
            case DIED -> speech.say("count.line.died");
            case HATCHED -> speech.say("count.line.hatched", line.fish());
            case MOVED_IN -> speech.say("count.line.movedIn", place(line.entry().orElseThrow().tankId()));
            case MOVED_OUT -> speech.say(
                    "count.line.movedOut", place(line.entry().orElseThrow().toTankId().orElseThrow()));
            case THINNED -> speech.say("count.line.thinned", line.entry().orElseThrow().place().orElse(""));
            case RELEASED -> speech.say("count.line.released", line.entry().orElseThrow().place().orElse(""));
            case COUNTED -> speech.say("count.line.counted", line.fish());
        };
    }

    /** How many more left or died than were there, or fewer were found; empty where it fits. */
    public Optional<String> unexplained(Account.Line line) {
        return line.surplus() == 0 ? Optional.empty() : Optional.of(speech.say(
                line.surplus() > 0 ? "count.line.surplus" : "count.line.missing", Math.abs(line.surplus())));
    }

    private String place(int tankId) {
        Tank other = tanks.get(tankId);
        return other.school() + ", " + other.classroom();
    }
}
