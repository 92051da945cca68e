package org.tankrounds.rounds;

import java.util.List;
import org.tankrounds.web.Speech;

/** The board's answer in one line. */
final class BoardHeading {
    private static final int NAMED = 2;

    private final Speech speech;

    BoardHeading(Speech speech) {
        this.speech = speech;
    }

    String of(Board board) {
        List<String> today = board.schools(Tier.GO_TODAY);
        List<String> week = board.schools(Tier.GO_THIS_WEEK);
        List<String> ask = board.schools(Tier.ASK_FOR_A_READING);
        if (!board.inTrouble().isEmpty()) {
            String call = speech.say("board.trouble", inOrder(board.inTrouble()));
            return today.isEmpty() ? call : speech.say("board.troubleAndStart", call, inOrder(today));
        }
        if (!today.isEmpty()) {
            return speech.say("board.start", inOrder(today));
        }
        if (!week.isEmpty()) {
            return speech.say("board.week", inOrder(week));
        }
        if (!ask.isEmpty()) {
            return speech.say("board.ask", inOrder(ask));
        }
        return speech.say(board.all().isEmpty() ? "board.noTank" : "board.nothing");
    }

    private String inOrder(List<String> schools) {
        String named = schools.stream().limit(NAMED)
                .reduce((first, next) -> speech.say("board.then", first, next)).orElseThrow();
        int more = schools.size() - NAMED;
        return more > 0 ? speech.say("board.andMore", named, more) : named;
    }
}
