package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.FanPoint;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.forecast.Way;
import org.tankrounds.forecast.Ways;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;

/** How far apart the ways lie in which a tank could go, in words. */
final class SpreadWording {
    /** From so many ways on, it is no longer worth saying "if". */
    private static final int NEARLY_ALL = 19;
    /** With fewer, where the water stays says more than when it would not. */
    private static final int FEWEST_TO_DATE = 3;
    private static final int EVENING = 17;

    private final Formats formats;
    private final Speech speech;
    private final Levels levels;

    SpreadWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.levels = new Levels(speech);
    }

    /** A few words for a row: when it would happen, or where the water stays. */
    String brief(Forecast forecast, Ways ways, Optional<SeriesForecast> leading) {
        List<Way> beyond = ways.beyond();
        if (beyond.size() < FEWEST_TO_DATE) {
            return leading.map(this::stays).orElse("");
        }
        long unseen = unseen(ways);
        if (unseen > 0 && 2 * unseen >= beyond.size()) {
            return speech.say(unseen == beyond.size() ? "ways.byDeaths" : "ways.mostlyByDeaths");
        }
        List<Way> dated = beyond.stream().filter(way -> way.afterHours().isPresent()).toList();
        String first = when(forecast, dated.get(dated.size() / 4));
        String last = when(forecast, dated.get(dated.size() * 3 / 4));
        String span = first.equals(last) ? first : speech.say("levels.fromTo", first, last);
        return beyond.size() >= NEARLY_ALL ? span : speech.say("ways.ifSo", span);
    }

    /** "In 7 of 20 ways this could go, the water crosses 18 °C before Monday 8:15, if nobody steps in." */
    String answer(Forecast forecast, Ways ways) {
        int count = ways.beyond().size();
        String until = formats.dayAndClock(end(forecast));
        String answer = count == 0 ? speech.say("ways.answerNone", Ways.COUNT, happens(forecast, ways), until)
                : speech.say("ways.answer", count, Ways.COUNT, happens(forecast, ways), until);
        return Phrase.joined(answer, unseen(unseen(ways), count));
    }

    private String happens(Forecast forecast, Ways ways) {
        Set<Optional<Driver>> limits = ways.beyond().stream().map(Way::limit).collect(Collectors.toSet());
        return limits.size() == 1 && ways.beyond().get(0).limit().isPresent()
                ? crossing(forecast, ways.beyond().get(0).limit().get()) : speech.say("ways.happens.any");
    }

    private String unseen(long unseen, int count) {
        if (unseen == 0) {
            return "";
        }
        return unseen == count ? speech.say("ways.unseen") : speech.say("ways.unseenPart", unseen);
    }

    private static long unseen(Ways ways) {
        return ways.beyond().stream().filter(way -> way.limit().isEmpty()).count();
    }

    /** "Temperature on Saturday 8:00: 15.2 to 19.8 °C in 9 ways of 10, 16.0 to 18.3 °C in half of them." */
    String levels(Forecast forecast, SeriesForecast series) {
        if (series.fan().isEmpty()) {
            return "";
        }
        FanPoint end = series.fan().get(series.fan().size() - 1);
        return speech.say("ways.levels", levels.name(series.series()), formats.dayAndClock(end(forecast)),
                range(series.series(), end.q05(), end.q95()), range(series.series(), end.q25(), end.q75()));
    }

    /** Which dot is which, where there are several sorts. */
    String signs(Ways ways) {
        List<Driver> limits = limits(ways);
        if (limits.size() < 2) {
            return "";
        }
        String others = levels.list(limits.subList(1, limits.size()).stream().map(levels::inSentence).toList());
        List<Driver> seen = ways.beyond().stream().flatMap(way -> way.limit().stream()).toList();
        long round = count(seen, limits.get(0));
        return speech.say("ways.signs", round, levels.inSentence(limits.get(0)), others, seen.size() - round);
    }

    /** The limits that are passed first, the one of most ways in front. */
    static List<Driver> limits(Ways ways) {
        List<Driver> all = ways.beyond().stream().flatMap(way -> way.limit().stream()).toList();
        return all.stream().distinct().sorted((one, other) ->
                Long.compare(count(all, other), count(all, one))).toList();
    }

    private static long count(List<Driver> all, Driver one) {
        return all.stream().filter(one::equals).count();
    }

    private String crossing(Forecast forecast, Driver limit) {
        return speech.say("ways.happens." + limit.code(), levels.limit(limit, level(forecast, limit)));
    }

    private static double level(Forecast forecast, Driver limit) {
        OptionalDouble drawn = forecast.series().stream().filter(series -> series.series() == limit)
                .map(SeriesForecast::limit).findFirst().orElse(OptionalDouble.empty());
        return drawn.orElse(Limits.DEFAULT.chlorineMgPerL());
    }

    private String stays(SeriesForecast series) {
        double low = series.fan().stream().mapToDouble(FanPoint::q05).min().orElse(Double.NaN);
        double high = series.fan().stream().mapToDouble(FanPoint::q95).max().orElse(Double.NaN);
        if (Double.isNaN(low)) {
            return "";
        }
        String upTo = speech.say("levels.upTo", levels.bare(series.series(), high) + Formats.NO_BREAK + "mg/L");
        return switch (series.series()) {
            case UN_IONISED_AMMONIA -> speech.say("ways.likelyAmmonia", upTo);
            case NITRITE -> speech.say("ways.likelyNitrite", upTo);
            case TEMPERATURE -> speech.say("ways.likely", range(series.series(), low, high));
            default -> speech.say("ways.likelyOf", levels.inSentence(series.series()),
                    range(series.series(), low, high));
        };
    }

    /** What is small is told by its upper end; the lower one is next to nothing. */
    private String range(Driver series, double low, double high) {
        if (Levels.isSmall(series)) {
            return speech.say("levels.upTo", levels.withUnit(series, high));
        }
        return levels.bare(series, low).equals(levels.bare(series, high)) ? levels.withUnit(series, high)
                : levels.span(series, low, high);
    }

    private String when(Forecast forecast, Way way) {
        Instant at = forecast.asOf().plus(Duration.ofHours(way.afterHours().orElse(Forecast.HORIZON_HOURS)));
        if (way.afterHours().orElse(1) == 0) {
            return speech.say("ways.now");
        }
        if (!formats.date(at).equals(formats.date(formats.now()))) {
            return formats.weekday(at);
        }
        return speech.say(formats.hour(at) < EVENING ? "ways.today" : "ways.tonight");
    }

    private static Instant end(Forecast forecast) {
        return forecast.asOf().plus(Duration.ofHours(Forecast.HORIZON_HOURS));
    }
}
