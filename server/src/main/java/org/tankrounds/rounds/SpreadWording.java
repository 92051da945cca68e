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

/** How far apart the ways lie in which a tank could go, in words. */
final class SpreadWording {
    /** From so many ways on, it is no longer worth saying "if". */
    private static final int NEARLY_ALL = 19;
    /** With fewer, where the water stays says more than when it would not. */
    private static final int FEWEST_TO_DATE = 3;
    private static final int EVENING = 17;

    private final Formats formats;

    SpreadWording(Formats formats) {
        this.formats = formats;
    }

    /** A few words for a row: when it would happen, or where the water stays. */
    String brief(Forecast forecast, Ways ways, Optional<SeriesForecast> leading) {
        List<Way> beyond = ways.beyond();
        if (beyond.size() < FEWEST_TO_DATE) {
            return leading.map(SpreadWording::stays).orElse("");
        }
        long unseen = unseen(ways);
        if (unseen > 0 && 2 * unseen >= beyond.size()) {
            return unseen == beyond.size() ? "told by deaths only" : "told by deaths more than by readings";
        }
        List<Way> dated = beyond.stream().filter(way -> way.afterHours().isPresent()).toList();
        String first = when(forecast, dated.get(dated.size() / 4));
        String last = when(forecast, dated.get(dated.size() * 3 / 4));
        String span = first.equals(last) ? first : first + " to " + last;
        return beyond.size() >= NEARLY_ALL ? span : "if so, " + span;
    }

    /** "In 7 of 20 ways this could go, the water crosses 18 °C before Monday 8:15, if nobody steps in." */
    String answer(Forecast forecast, Ways ways) {
        int count = ways.beyond().size();
        Set<Optional<Driver>> limits = ways.beyond().stream().map(Way::limit).collect(Collectors.toSet());
        String happens = limits.size() == 1 && ways.beyond().get(0).limit().isPresent()
                ? crossing(forecast, ways.beyond().get(0).limit().get())
                : "the water goes beyond a limit";
        return "In " + (count == 0 ? "none" : String.valueOf(count)) + " of " + Ways.COUNT + " ways this could go, "
                + happens + " before " + until(forecast) + ", if nobody steps in."
                + unseen(unseen(ways), count);
    }

    private static String unseen(long unseen, int count) {
        return unseen == 0 ? "" : unseen == count ? " The deaths tell of it; no reading shows it."
                : " Of " + unseen + " only the deaths tell; no reading shows them.";
    }

    private static long unseen(Ways ways) {
        return ways.beyond().stream().filter(way -> way.limit().isEmpty()).count();
    }

    /** "By then temperature 15.2 to 19.8 °C in 9 ways of 10, 16.0 to 18.3 in half of them." */
    String levels(Forecast forecast, SeriesForecast series) {
        if (series.fan().isEmpty()) {
            return "";
        }
        FanPoint end = series.fan().get(series.fan().size() - 1);
        return Levels.name(series.series()) + " on " + until(forecast) + ": "
                + range(series.series(), end.q05(), end.q95()) + " in 9 ways of 10, "
                + range(series.series(), end.q25(), end.q75()) + " in half of them.";
    }

    /** Which dot is which, where there are several sorts. */
    String signs(Ways ways) {
        List<Driver> limits = limits(ways);
        if (limits.size() < 2) {
            return "";
        }
        String others = Analytes.list(limits.subList(1, limits.size()).stream().map(Levels::inSentence).toList());
        List<Driver> seen = ways.beyond().stream().flatMap(way -> way.limit().stream()).toList();
        long round = count(seen, limits.get(0));
        return "Round: " + Levels.inSentence(limits.get(0)) + " first, " + round + " ways; square: " + others
                + " first, " + (seen.size() - round) + ".";
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

    private static String crossing(Forecast forecast, Driver limit) {
        if (limit == Driver.PH) {
            return "pH leaves its limits";
        }
        String level = Levels.limit(limit, level(forecast, limit));
        if (limit == Driver.TEMPERATURE) {
            return "the water crosses " + level;
        }
        return Levels.inSentence(limit) + (limit == Driver.DISSOLVED_OXYGEN ? " falls under " : " goes over ") + level;
    }

    private static double level(Forecast forecast, Driver limit) {
        OptionalDouble drawn = forecast.series().stream().filter(series -> series.series() == limit)
                .map(SeriesForecast::limit).findFirst().orElse(OptionalDouble.empty());
        return drawn.orElse(Limits.DEFAULT.chlorineMgPerL());
    }

    private static String stays(SeriesForecast series) {
        double low = series.fan().stream().mapToDouble(FanPoint::q05).min().orElse(Double.NaN);
        double high = series.fan().stream().mapToDouble(FanPoint::q95).max().orElse(Double.NaN);
        if (Double.isNaN(low)) {
            return "";
        }
        String upTo = "up to " + Levels.bare(series.series(), high) + Formats.NO_BREAK + "mg/L";
        return "likely " + switch (series.series()) {
            case UN_IONISED_AMMONIA -> "NH₃ " + upTo;
            case NITRITE -> "nitrite-N " + upTo;
            case TEMPERATURE -> range(series.series(), low, high);
            default -> Levels.inSentence(series.series()) + " " + range(series.series(), low, high);
        };
    }

    /** What is small is told by its upper end; the lower one is next to nothing. */
    private static String range(Driver series, double low, double high) {
        if (Levels.isSmall(series)) {
            return "up to " + Levels.withUnit(series, high);
        }
        String from = Levels.bare(series, low);
        return from.equals(Levels.bare(series, high)) ? Levels.withUnit(series, high)
                : from + " to " + Levels.withUnit(series, high);
    }

    private String when(Forecast forecast, Way way) {
        Instant at = forecast.asOf().plus(Duration.ofHours(way.afterHours().orElse(Forecast.HORIZON_HOURS)));
        if (way.afterHours().orElse(1) == 0) {
            return "now";
        }
        if (!formats.date(at).equals(formats.date(formats.now()))) {
            return formats.weekday(at);
        }
        return formats.hour(at) < EVENING ? "today" : "tonight";
    }

    private String until(Forecast forecast) {
        Instant end = forecast.asOf().plus(Duration.ofHours(Forecast.HORIZON_HOURS));
        return formats.day(end) + " " + formats.clock(end);
    }
}
