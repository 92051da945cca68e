package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tankrounds.advice.Act;
import org.tankrounds.web.Formats;

/** What goes into the car, short enough for a row that is read while packing. */
final class BringList {
    private static final int MOST = 3;

    private BringList() {}

    static String of(List<Act> acts) {
        List<String> things = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        for (Act act : acts) {
            if (act.kind() == Act.Kind.ASK_FOR_READING) {
                asked.add(Analytes.inSentence(act.asks()));
            } else if (!thing(act).isEmpty()) {
                things.add(thing(act));
            }
        }
        if (!asked.isEmpty() && things.size() < MOST) {
            things.add("ask for " + Analytes.list(asked));
        }
        String list = String.join(", ", things.subList(0, Math.min(MOST, things.size())));
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
            case LEAVE_WATER, SKIP_FEED, ASK_FOR_READING, LOOK_AT_FISH -> "";
        };
    }

    private static String amount(Act act) {
        return act.amount().isPresent()
                ? " " + Formats.significant(act.amount().getAsDouble(), 2) + Formats.NO_BREAK + act.unit()
                : "";
    }
}
