package org.tankrounds.rounds;

import java.util.List;

/** How a past morning did, in one line: whether trouble came where the board sent somebody, or elsewhere. */
final class MorningScore {

    /** @param toGoTo whether the board sent somebody there, today or this week */
    record Scored(boolean toGoTo, Aftermath then) {}

    private final List<Scored> tanks;
    private final boolean isOver;

    private MorningScore(List<Scored> tanks) {
        this.tanks = tanks;
        this.isOver = tanks.stream().allMatch(tank -> tank.then().isOver());
    }

    /**
     * "Of the 3 tanks to go to, 2 went beyond a limit within three days by later readings; of the 5 others, 1 did. The
     * water of 1 was not read."
     */
    static String of(List<Scored> tanks) {
        return new MorningScore(tanks).line();
    }

    private String line() {
        List<Scored> sent = tanks.stream().filter(Scored::toGoTo).toList();
        List<Scored> others = tanks.stream().filter(tank -> !tank.toGoTo()).toList();
        if (sent.isEmpty()) {
            return "There was no tank to go to; of " + others.size() + ", " + went(others) + "." + unread();
        }
        return "Of the " + (sent.size() == 1 ? "one tank" : sent.size() + " tanks") + " to go to, " + went(sent)
                + (others.isEmpty() ? "" : "; " + did(others)) + "." + unread();
    }

    private String went(List<Scored> some) {
        String count = beyond(some) == 0 ? "none" : String.valueOf(beyond(some));
        return isOver ? count + " went beyond a limit within three days by later readings"
                : count + (beyond(some) > 1 ? " have" : " has") + " gone beyond a limit so far by later readings";
    }

    private String did(List<Scored> others) {
        String of = others.size() == 1 ? "the other one" : "of the " + others.size() + " others, "
                + (beyond(others) == 0 ? "none" : String.valueOf(beyond(others)));
        if (others.size() == 1 && beyond(others) == 0) {
            return of + (isOver ? " did not" : " has not");
        }
        return of + (isOver ? " did" : beyond(others) > 1 ? " have" : " has");
    }

    private String unread() {
        long count = tanks.stream().filter(tank -> tank.then().read().isEmpty()).count();
        return count == 0 ? "" : " The water of " + count + (isOver ? " was not read." : " has not been read.");
    }

    private static long beyond(List<Scored> some) {
        return some.stream().filter(tank -> tank.then().wentBeyond()).count();
    }
}
