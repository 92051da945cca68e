package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.breaks.BreakWording;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Reason;
import org.tankrounds.forecast.SeriesForecast;
import org.tankrounds.pages.FormPage;
import org.tankrounds.pages.RoundsPage;
import org.tankrounds.pages.SmallPicture;
import org.tankrounds.readings.LastLook;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** From the board to the page that prints it. */
final class RoundsPages {
    private static final Duration HORIZON = Duration.ofHours(Forecast.HORIZON_HOURS);

    private final Formats formats;
    private final Speech speech;
    private final ReasonWording wording;
    private final Sparkline sparkline;
    private final SpreadWording spread;

    RoundsPages(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
        this.wording = new ReasonWording(formats);
        this.sparkline = new Sparkline(formats);
        this.spread = new SpreadWording(formats);
    }

    /**
     * @param past where the mornings before are looked at
     * @param doors to what is near and concerns several tanks
     */
    RoundsPage page(Board board, String tag, String past, List<FormPage.Link> doors) {
        Map<Driver, SeriesScale> scales = scales(board);
        List<RoundsPage.Group> groups = new ArrayList<>();
        int place = 1;
        for (Tier tier : Tier.values()) {
            List<RoundsPage.Row> rows = new ArrayList<>();
            for (Board.Entry entry : board.of(tier)) {
                rows.add(row(entry, tier, place++, scales));
            }
            if (!rows.isEmpty()) {
                groups.add(new RoundsPage.Group(
                        tier.key(), speech.say("board.tier." + tier.key()), hint(tier), rows));
            }
        }
        return new RoundsPage(new BoardHeading(speech).of(board), lead(board), tag, past, doors,
                formats.full(formats.now()), groups);
    }

    private String lead(Board board) {
        if (board.all().isEmpty()) {
            return speech.say("board.empty");
        }
        long schools = board.all().stream().map(entry -> entry.tank().room().schoolCode()).distinct().count();
        Instant until = board.all().stream().flatMap(entry -> entry.forecast().stream())
                .map(row -> row.forecast().asOf()).max(Instant::compareTo).orElse(formats.now()).plus(HORIZON);
        return speech.say("board.lead", speech.say("board.tanks", board.all().size()),
                speech.say("board.schools", schools), formats.dayAndClock(until));
    }

    /** Why somebody is to go, or to ask. */
    private String hint(Tier tier) {
        return switch (tier) {
            case GO_TODAY -> speech.say("board.hint.today");
            case ASK_FOR_A_READING -> speech.say("board.hint.ask");
            case GO_THIS_WEEK, NOTHING_NEEDED -> "";
        };
    }

    private RoundsPage.Row row(Board.Entry entry, Tier tier, int place, Map<Driver, SeriesScale> scales) {
        String room = entry.tank().classroom() + " · " + Formats.significant(entry.tank().volumeL(), 3) + " L";
        if (entry.forecast().isEmpty()) {
            return new RoundsPage.Row(entry.tank().code(), place, entry.tank().school(), room,
                    speech.say("board.new"), speech.say("board.firstForecast"), seen(entry), away(entry), "", null, "",
                    0, false, "", "", "");
        }
        TankForecast row = entry.forecast().get();
        List<Phrase> phrases = phrases(row.forecast(), tier);
        boolean quiet = tier == Tier.NOTHING_NEEDED;
        return new RoundsPage.Row(
                entry.tank().code(), place, entry.tank().school(), room,
                entry.isInTrouble() ? seen(entry) : phrases.get(0).lead(),
                rest(entry, phrases),
                entry.isInTrouble() ? "" : seen(entry), away(entry),
                entry.seen().isPresent() || entry.away().isPresent() ? "" : more(row, tier, phrases),
                quiet ? null : picture(row, scales),
                formats.chance(row.forecast().chance()), Formats.tenths(row.forecast().chance()), !quiet,
                row.ways().map(ways -> spread.brief(row.forecast(), ways, leading(row.forecast()))).orElse(""),
                quiet ? "" : new BringList(speech).of(row.acts()),
                row.lastLook().map(this::lastLook).orElseGet(() -> speech.say("board.neverRead")));
    }

    private static String rest(Board.Entry entry, List<Phrase> phrases) {
        Phrase first = phrases.get(0);
        return entry.isInTrouble() ? Phrase.joined(first.lead(), first.rest()) : Phrase.joined(first.rest(),
                phrases.size() > 1 && entry.seen().isEmpty() ? phrases.get(1).lead() : "");
    }

    private String seen(Board.Entry entry) {
        return entry.seen().map(seen -> SeenWording.sentences(seen, entry.stage(), formats)).orElse("");
    }

    private String away(Board.Entry entry) {
        return entry.away().map(new BreakWording(formats)::line).orElse("");
    }

    /** Somebody who asks for a reading had best ask for the one that tells most. */
    private String more(TankForecast row, Tier tier, List<Phrase> phrases) {
        Optional<Saying> narrows = tier == Tier.ASK_FOR_A_READING ? NarrowWording.reading(row) : Optional.empty();
        return narrows.map(speech::say).orElseGet(() -> phrases.size() > 2 ? phrases.get(2).lead() : "");
    }

    /** A quiet tank needs few words; of the others, three reasons. */
    private List<Phrase> phrases(Forecast forecast, Tier tier) {
        List<Reason> reasons = forecast.reasons();
        if (reasons.isEmpty()) {
            return List.of(Phrase.of(speech.say("reasons.addsMost", new Levels(speech).name(forecast.driver()))));
        }
        return wording.of(reasons.subList(0, Math.min(tier == Tier.NOTHING_NEEDED ? 2 : 3, reasons.size())));
    }

    private String lastLook(LastLook look) {
        return formats.moment(look.at()) + (look.by().isEmpty() ? "" : ", " + look.by());
    }

    private SmallPicture picture(TankForecast row, Map<Driver, SeriesScale> scales) {
        return leading(row.forecast())
                .map(series -> sparkline.draw(row, series, scales.get(series.series())))
                .orElse(null);
    }

    /** The series that the row speaks of: the first reason's that can be drawn, else the driver's. */
    static Optional<SeriesForecast> leading(Forecast forecast) {
        List<Driver> candidates = new ArrayList<>();
        forecast.reasons().forEach(reason -> reason.driver().ifPresent(candidates::add));
        candidates.add(forecast.driver());
        candidates.add(Driver.TEMPERATURE);
        return candidates.stream()
                .flatMap(driver -> forecast.series().stream().filter(series -> series.series() == driver))
                .findFirst();
    }

    private static Map<Driver, SeriesScale> scales(Board board) {
        Map<Driver, SeriesScale> scales = new EnumMap<>(Driver.class);
        for (Driver series : SeriesOfTank.DRAWN) {
            List<Double> levels = board.all().stream().flatMap(entry -> entry.forecast().stream())
                    .flatMap(row -> Sparkline.levels(row, series).stream()).toList();
            scales.put(series, SeriesScale.usual(series).covering(levels));
        }
        return scales;
    }
}
