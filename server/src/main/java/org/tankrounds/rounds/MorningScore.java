package org.tankrounds.rounds;

import java.util.List;
import org.tankrounds.web.Speech;

/** How a past morning did, in one line: whether trouble came where the board sent somebody, or elsewhere. */
final class MorningScore {

    /** @param toGoTo whether the board sent somebody there, today or this week */
    record Scored(boolean toGoTo, Aftermath then) {}

    private final List<Scored> tanks;
    private final boolean isOver;
    private final Speech speech;

    private MorningScore(List<Scored> tanks, Speech speech) {
        this.tanks = tanks;
        this.isOver = tanks.stream().allMatch(tank -> tank.then().isOver());
        this.speech = speech;
    }

    /**
     * "Of the 3 tanks to go to, 2 went beyond a limit within three days by later readings; of the 5 others, 1 did. The
     * water of 1 was not read."
     */
    static String of(List<Scored> tanks, Speech speech) {
        MorningScore score = new MorningScore(tanks, speech);
        return Phrase.joined(score.went(), score.unread());
    }

    private String went() {
        List<Scored> sent = tanks.stream().filter(Scored::toGoTo).toList();
        List<Scored> others = tanks.stream().filter(tank -> !tank.toGoTo()).toList();
        if (sent.isEmpty()) {
            return speech.say("morning.score.none", others.size(), went(others));
        }
        return others.isEmpty() ? speech.say("morning.score.sent", sent.size(), went(sent))
                : speech.say("morning.score.sentAndOthers", sent.size(), went(sent),
                        others.size() == 1 ? other(others) : others(others));
    }

    private String went(List<Scored> some) {
        if (beyond(some) == 0) {
            return speech.say(isOver ? "morning.score.wentNone" : "morning.score.goneNone");
        }
        return speech.say(isOver ? "morning.score.went" : "morning.score.gone", beyond(some));
    }

    private String other(List<Scored> one) {
        boolean beyond = beyond(one) > 0;
        if (isOver) {
            return speech.say(beyond ? "morning.score.otherWent" : "morning.score.otherWentNot");
        }
        return speech.say(beyond ? "morning.score.otherGone" : "morning.score.otherGoneNot");
    }

    private String others(List<Scored> others) {
        if (beyond(others) == 0) {
            return speech.say(isOver ? "morning.score.othersWentNone" : "morning.score.othersGoneNone", others.size());
        }
        return speech.say(isOver ? "morning.score.othersWent" : "morning.score.othersGone",
                beyond(others), others.size());
    }

    private String unread() {
        long count = tanks.stream().filter(tank -> tank.then().read().isEmpty()).count();
        return count == 0 ? ""
                : speech.say(isOver ? "morning.score.unread" : "morning.score.unreadSoFar", count);
    }

    private static long beyond(List<Scored> some) {
        return some.stream().filter(tank -> tank.then().wentBeyond()).count();
    }
}
