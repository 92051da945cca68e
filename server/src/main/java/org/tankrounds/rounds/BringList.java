package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What goes into the car, short enough for a row that is read while packing. */
final class BringList {
    private static final int MOST = 3;

    private final Speech speech;

    BringList(Speech speech) {
        this.speech = speech;
    }

    String of(List<Act> acts) {
        List<String> parts = things(acts);
        if (parts.size() < MOST) {
            asked(acts).ifPresent(parts::add);
        }
        if (parts.size() < MOST && callsForHelp(acts)) {
            parts.add(speech.say("advice.bring.help"));
        }
        return capital(mostOf(parts.isEmpty() ? care(acts) : parts));
    }

    /** The same where no heading says "bring". */
    String sentences(List<Act> acts) {
        List<String> things = things(acts);
        List<String> sentences = new ArrayList<>();
        if (!things.isEmpty()) {
            sentences.add(speech.say("advice.bring", mostOf(things)));
        }
        if (things.size() < MOST) {
            asked(acts).ifPresent(asked -> sentences.add(capital(asked) + "."));
        }
        return String.join(" ", sentences);
    }

    private static String mostOf(List<String> parts) {
        return String.join(", ", parts.subList(0, Math.min(MOST, parts.size())));
    }

    private List<String> things(List<Act> acts) {
        return acts.stream().flatMap(act -> thing(act).stream()).collect(Collectors.toCollection(ArrayList::new));
    }

    /** Where nothing helps that can be carried, what is left to do there. */
    private List<String> care(List<Act> acts) {
        return acts.stream().flatMap(act -> switch (act.kind()) {
            case SKIP_FEED -> Stream.of("advice.bring.noFeed");
            case LEAVE_ALKALINITY -> Stream.of("advice.bring.tomorrow");
            case LOOK_AT_FISH -> Stream.of("advice.bring.look");
            default -> Stream.<String>empty();
        }).map(speech::say).toList();
    }

    private static boolean callsForHelp(List<Act> acts) {
        return acts.stream().anyMatch(act -> act.kind() == Act.Kind.CALL_FOR_HELP);
    }

    private Optional<String> asked(List<Act> acts) {
        Levels levels = new Levels(speech);
        List<String> asked = acts.stream().filter(act -> act.kind() == Act.Kind.ASK_FOR_READING)
                .map(act -> levels.asked(act.asks())).toList();
        return asked.isEmpty() ? Optional.empty() : Optional.of(speech.say("advice.bring.ask", levels.list(asked)));
    }

    private String capital(String list) {
        return list.isEmpty() ? "" : list.substring(0, 1).toUpperCase(speech.language().locale()) + list.substring(1);
    }

    private Optional<String> thing(Act act) {
        return switch (act.kind()) {
            case WATER_CHANGE -> Optional.of(act.secondAmount().isPresent()
                    ? speech.say("advice.bring.water", Formats.significant(act.secondAmount().getAsDouble(), 2)
                            + Formats.NO_BREAK + "L")
                    : speech.say("advice.bring.someWater"));
            case SALT -> Optional.of(amount(act, "advice.bring.salt", "advice.bring.someSalt"));
            case BICARBONATE -> Optional.of(amount(act, "advice.bring.soda", "advice.bring.someSoda"));
            case ICE -> Optional.of(amount(act, "advice.bring.ice", "advice.bring.someIce"));
            case THIOSULFATE ->
                    Optional.of(amount(act, "advice.bring.thiosulfate", "advice.bring.someThiosulfate"));
            case CHECK_CHILLER -> Optional.of(speech.say("advice.bring.chiller"));
            case MORE_AIR -> Optional.of(speech.say("advice.bring.air"));
            case LEAVE_WATER, TEST_WATER_FIRST, LEAVE_ALKALINITY, SKIP_FEED, ASK_FOR_READING, LOOK_AT_FISH,
                    CALL_FOR_HELP -> Optional.empty();
        };
    }

    private String amount(Act act, String soMuch, String some) {
        if (act.amount().isEmpty()) {
            return speech.say(some);
        }
        String number = Formats.significant(act.amount().getAsDouble(), 2);
        return speech.say(soMuch, DoseWording.isPer100L(act) ? speech.say("advice.bring.per100L", number)
                : number + Formats.NO_BREAK + act.unit());
    }
}
