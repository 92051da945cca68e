package org.tankrounds.classroom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tankrounds.advice.Act;
import org.tankrounds.behaviour.Alarm;
import org.tankrounds.behaviour.Look;
import org.tankrounds.behaviour.LookWording;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ClassPage.Todo;
import org.tankrounds.rounds.TankToday;
import org.tankrounds.web.Formats;

/** What is grave about the fish of a tank, whatever was measured: it comes first on the page of their class. */
final class Trouble {
    private final TankToday today;
    private final SeenLately seen;
    private final Stage stage;
    private final Formats formats;

    Trouble(TankToday today, SeenLately seen, Formats formats) {
        this.today = today;
        this.seen = seen;
        this.stage = today.stage();
        this.formats = formats;
    }

    boolean isGrave() {
        return isSeen() || today.dieInNumbers();
    }

    private boolean isSeen() {
        return seen.alarm(stage) == Alarm.ACT;
    }

    /** Empty where nothing is grave. */
    Optional<String> heading() {
        if (isSeen()) {
            return Optional.of(say("classroom.title.trouble"));
        }
        return today.dieInNumbers() ? Optional.of(say("classroom.title.dead")) : Optional.empty();
    }

    /** In the place of a word of praise for the water. */
    Optional<String> unusual() {
        return seen.isTold(stage) ? Optional.of(say("classroom.title.unusual")) : Optional.empty();
    }

    /** What was seen and counted, where it is grave; else empty. */
    String facts() {
        List<String> facts = new ArrayList<>();
        if (isSeen()) {
            facts.add(seen.worrying(stage).stream().map(this::seen).collect(Collectors.joining(" ")));
        }
        if (isGrave()) {
            facts.add(dead());
        }
        return facts.stream().filter(fact -> !fact.isEmpty()).collect(Collectors.joining(" "));
    }

    /** The dead of the last days; empty where none were found. */
    String dead() {
        int dead = today.deadLately();
        return dead == 0 ? "" : say("classroom.fish.dead", dead, formats.lasting(TankToday.LATELY.toHours()));
    }

    String seen(Look look) {
        return say("classroom.fish.seen", formats.moment(look.seenAt()),
                LookWording.list(look.seen(), formats.speech().words()));
    }

    /** Where the advice of the day does not say it already. */
    Optional<Todo> todo() {
        if (isGrave()) {
            return today.isAdvised(Act.Kind.CALL_FOR_HELP) ? Optional.empty()
                    : Optional.of(todo("tell", "/log", say("classroom.todo.putIn")));
        }
        return seen.isTold(stage) ? Optional.of(todo("again", "/fish", say("classroom.fish.lookAgain")))
                : Optional.empty();
    }

    private Todo todo(String what, String page, String link) {
        return new Todo(say("classroom.trouble." + what), say("classroom.trouble." + what + ".how"), "", "", "",
                "/tanks/" + today.tank().code() + page, link, "");
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
