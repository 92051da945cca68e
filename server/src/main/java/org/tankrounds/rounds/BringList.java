package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.web.Formats;

/** What goes into the car, short enough for a row that is read while packing. */
final class BringList {
    private static final int MOST = 3;

    private BringList() {}

    static String of(List<Act> acts) {
        List<String> parts = things(acts);
        if (parts.size() < MOST && !asked(acts).isEmpty()) {
            parts.add(asked(acts));
        }
        if (parts.size() < MOST && callsForHelp(acts)) {
            parts.add("call for help");
        }
        return capital(mostOf(parts.isEmpty() ? care(acts) : parts));
    }

    /** The same where no heading says "bring". */
    static String sentences(List<Act> acts) {
        List<String> things = things(acts);
        List<String> sentences = new ArrayList<>();
        if (!things.isEmpty()) {
            sentences.add("Bring: " + mostOf(things) + ".");
        }
        if (things.size() < MOST && !asked(acts).isEmpty()) {
            sentences.add(capital(asked(acts)) + ".");
        }
        return String.join(" ", sentences);
    }

    private static String mostOf(List<String> parts) {
        return String.join(", ", parts.subList(0, Math.min(MOST, parts.size())));
    }

    private static List<String> things(List<Act> acts) {
        return acts.stream().map(BringList::thing).filter(thing -> !thing.isEmpty())
                .collect(Collectors.toCollection(ArrayList::new));
    }

    /** Where nothing helps that can be carried, what is left to do there. */
    private static List<String> care(List<Act> acts) {
        return acts.stream().flatMap(act -> switch (act.kind()) {
            case SKIP_FEED -> Stream.of("no feed");
            case LEAVE_ALKALINITY -> Stream.of("read alkalinity, ammonia and nitrite again tomorrow");
            case LOOK_AT_FISH -> Stream.of("look at the fish");
            default -> Stream.<String>empty();
        }).toList();
    }

    private static boolean callsForHelp(List<Act> acts) {
        return acts.stream().anyMatch(act -> act.kind() == Act.Kind.CALL_FOR_HELP);
    }

    private static String asked(List<Act> acts) {
        List<String> asked = acts.stream().filter(act -> act.kind() == Act.Kind.ASK_FOR_READING)
                .map(act -> Analytes.inSentence(act.asks())).toList();
        return asked.isEmpty() ? "" : "ask for " + Analytes.list(asked);
    }

    private static String capital(String list) {
        return list.isEmpty() ? "" : list.substring(0, 1).toUpperCase(Locale.ENGLISH) + list.substring(1);
    }

    private static String thing(Act act) {
        return switch (act.kind()) {
            case WATER_CHANGE -> act.secondAmount().isPresent()
                    ? "water " + Formats.significant(act.secondAmount().getAsDouble(), 2) + Formats.NO_BREAK + "L"
                    : "water for a change";
            case SALT -> "salt" + amount(act);
            case BICARBONATE -> "baking soda" + amount(act);
            case ICE -> "sealed ice" + amount(act);
            case THIOSULFATE -> "thiosulfate" + amount(act);
            case CHECK_CHILLER -> "spare chiller";
            case MORE_AIR -> "air pump and stone";
            case LEAVE_WATER, TEST_WATER_FIRST, LEAVE_ALKALINITY, SKIP_FEED, ASK_FOR_READING, LOOK_AT_FISH,
                    CALL_FOR_HELP -> "";
        };
    }

    private static String amount(Act act) {
        return act.amount().isPresent()
                ? " " + Formats.significant(act.amount().getAsDouble(), 2) + Formats.NO_BREAK
                        + act.unit().replace("/", " per ").replace(" ", Formats.NO_BREAK)
                : "";
    }
}
