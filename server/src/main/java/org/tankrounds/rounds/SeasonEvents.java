package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Development;
import org.tankrounds.pages.TankPage.Event;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** What happened besides readings: water changes, deaths, the begin of feeding. */
final class SeasonEvents {
    private static final String CHANGE = "▲";
    private static final String DEATHS = "✕";
    private static final String FEEDING = "◆";

    private SeasonEvents() {}

    /** Left to right, which is also the order in which they are read out. */
    static List<Event> of(
            List<Observation> observations, Optional<Development> development, SeasonAxis axis, Formats formats) {
        Speech speech = formats.speech();
        List<Map.Entry<Double, Event>> events = new ArrayList<>();
        for (Observation done : observations) {
            if (done.at().isBefore(axis.from())) {
                continue;
            }
            if (done.analyte() == Analyte.WATER_CHANGE && done.value() > 0) {
                add(events, axis.x(done.at()), CHANGE, speech.say("pictures.event.change",
                        Formats.significant(done.value(), 2), formats.shortDate(done.at())));
            } else if (done.analyte() == Analyte.DEATHS && done.value() > 0) {
                add(events, axis.x(done.at()), DEATHS, speech.say("pictures.event.dead",
                        Math.round(done.value()), formats.shortDate(done.at())));
            }
        }
        development.filter(lot -> lot.firstFeedingAt().isAfter(axis.from()))
                .map(Development::firstFeedingAt)
                .filter(at -> axis.x(at) <= SeasonAxis.WIDTH)
                .ifPresent(at -> add(events, axis.x(at), FEEDING,
                        speech.say("pictures.event.firstFeeding", formats.shortDate(at))));
        return events.stream().sorted(Comparator.comparingDouble(Map.Entry::getKey)).map(Map.Entry::getValue).toList();
    }

    private static void add(List<Map.Entry<Double, Event>> events, double x, String sign, String text) {
        events.add(Map.entry(x, new Event(SeasonAxis.percent(x), sign, text)));
    }
}
