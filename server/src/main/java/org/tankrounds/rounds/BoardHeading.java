package org.tankrounds.rounds;

import java.util.List;

/** The board's answer in one line. */
final class BoardHeading {
    private static final int NAMED = 2;

    private BoardHeading() {}

    static String of(Board board) {
        List<String> today = board.schools(Tier.GO_TODAY);
        List<String> week = board.schools(Tier.GO_THIS_WEEK);
        if (!today.isEmpty()) {
            return "Start at " + inOrder(today);
        }
        if (!week.isEmpty()) {
            return "Nothing needs you today; this week " + inOrder(week);
        }
        if (!board.of(Tier.ASK_FOR_A_READING).isEmpty()) {
            return "Nobody has to drive today; ask " + inOrder(board.schools(Tier.ASK_FOR_A_READING))
                    + " for a reading";
        }
        return board.all().isEmpty() ? "No tank is on the rounds yet" : "Nothing needs you today";
    }

    private static String inOrder(List<String> schools) {
        String named = String.join(", then ", schools.subList(0, Math.min(NAMED, schools.size())));
        int more = schools.size() - NAMED;
        return more > 0 ? named + " and " + more + " more" : named;
    }
}
