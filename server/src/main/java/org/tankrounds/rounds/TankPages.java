package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.advice.Remedy;
import org.tankrounds.behaviour.Look;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.pages.SeasonChart;
import org.tankrounds.pages.TankPage;
import org.tankrounds.pages.WaysPicture;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.Reading;
import org.tankrounds.tasks.Task;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;

/** From what is known of a tank to its page. */
final class TankPages {
    private static final Duration TWO_WEEKS = Duration.ofDays(14);
    private static final String CAPTION = "Dots are readings, hollow where nothing was detected; a line without dots "
            + "is a probe’s hourly mean; gaps are more than three days without a reading. Bands: half and nine tenths of "
            + "how the next 72 hours could go if nobody steps in, drawn wider than the past. Dashed: the limit, which "
            + "changes when the fish begin to feed. Below: ▲ water change, ✕ deaths, ◆ first feeding.";

    /** What one page is made of. */
    record Known(TankInput input, Optional<TankForecast> forecast, List<Reading> log, List<DeviceDay> days,
            Optional<Reading> saved, Optional<Look> look, List<Task> tasks) {
        Tank tank() {
            return input.tank();
        }
    }

    private final Caller caller;
    private final Formats formats;
    private final TankHeading heading;
    private final TankHolding holding;
    private final TankLog log;
    private final WaysPictures ways;
    private final ReasonWording wording;
    private final EffectWording effects;

    TankPages(Caller caller, Formats formats) {
        this.caller = caller;
        this.formats = formats;
        this.heading = new TankHeading(formats);
        this.holding = new TankHolding(formats);
        this.log = new TankLog(formats);
        this.ways = new WaysPictures(formats);
        this.wording = new ReasonWording(formats);
        this.effects = new EffectWording(formats);
    }

    TankPage page(Known known, boolean twoWeeks) {
        Tank tank = known.tank();
        TankSeason season = TankSeason.of(known.input(), known.forecast(), formats.now());
        return new TankPage(
                heading.of(tank, known.forecast()),
                backText(), caller.role() == Role.TEACHER ? "/tanks" : "/rounds",
                tank.school(), about(known), saved(known), tank.code(),
                advice(known), together(known), tasks(known),
                reasons(known), ways(known), NarrowWording.readingOrFact(known.input(), known.forecast()),
                pictures(known, season, twoWeeks),
                holding.facts(known.input(), known.forecast(), season.development()),
                log.rows(tank.code(), known.log(), known.days(), caller.signedIn()),
                caller.role() != Role.MENTOR, List.of(Role.IN_CHARGE).contains(caller.role()));
    }

    private String backText() {
        return switch (caller.role()) {
            case TEACHER -> "My tanks";
            case CLASS_CARD -> "";
            default -> "Rounds";
        };
    }

    private String about(Known known) {
        String last = known.forecast().flatMap(TankForecast::lastLook).or(known.input()::lastLook)
                .map(look -> "last reading " + formats.moment(look.at())
                        + (look.by().isEmpty() ? "" : ", " + look.by()))
                .orElse("no reading yet");
        return Formats.significant(known.tank().volumeL(), 3) + " L · " + last;
    }

    private WaysPicture ways(Known known) {
        return known.forecast().flatMap(row -> row.ways()
                .map(ways -> this.ways.draw(row.forecast(), ways))).orElse(null);
    }

    private List<TankPage.Advice> advice(Known known) {
        return known.forecast().stream().flatMap(row -> row.advice().remedies().stream()
                .map(remedy -> words(remedy, row.forecast(), known.tank()))).toList();
    }

    private TankPage.Advice words(Remedy remedy, Forecast forecast, Tank tank) {
        return ActWording.of(remedy.act(), forecast.stage().isBeforeFirstFeeding(), tank.hasChloramine())
                .withEffect(effects.alone(remedy));
    }

    private String together(Known known) {
        return known.forecast().flatMap(row -> row.advice().together()
                .map(effect -> effects.together(effect, row.forecast().asOf()))).orElse("");
    }

    private String saved(Known known) {
        return known.saved().map(reading -> "Saved " + formats.clock(reading.receivedAt()) + ". "
                + known.forecast().map(row -> counted(reading, row.forecast().asOf())).orElse("")
                + "Your coordinator sees it too.").orElse("");
    }

    private String counted(Reading reading, Instant asOf) {
        if (reading.measuredAt().isAfter(formats.now())) {
            return "The forecast counts it from " + formats.full(reading.measuredAt()) + " on. ";
        }
        if (reading.timeDoubtful()) {
            return "Its time is doubtful, because the clock of the device was far off. Until somebody corrects it in"
                    + " the log below, it counts for little. ";
        }
        boolean counts = !asOf.isBefore(reading.measuredAt()) && !asOf.isBefore(reading.receivedAt());
        return counts ? "The forecast below counts it already. " : "The forecast below does not count it yet. ";
    }

    private List<TankPage.Sentence> reasons(Known known) {
        Stream<TankPage.Sentence> read = known.forecast().stream()
                .flatMap(row -> wording.of(row.forecast().reasons()).stream())
                .map(phrase -> new TankPage.Sentence(phrase.lead(), phrase.rest()));
        return Stream.concat(seen(known).stream(), read).toList();
    }

    private Optional<TankPage.Sentence> seen(Known known) {
        Stage stage = known.forecast().map(row -> row.forecast().stage()).orElse(Stage.FEEDING);
        return known.look().filter(look -> !look.worries(stage).isEmpty())
                .map(look -> new TankPage.Sentence(SeenWording.sentence(look, stage, formats), ""));
    }

    /** What the class was asked, and what it ticked. */
    private List<String> tasks(Known known) {
        return known.tasks().stream().map(task -> task.doneAt().map(at -> "Done " + formats.moment(at) + ": ")
                .orElse("Asked " + formats.moment(task.askedAt()) + ", not done yet: ") + task.words()).toList();
    }

    private TankPage.Season pictures(Known known, TankSeason season, boolean twoWeeks) {
        Instant from = twoWeeks ? formats.now().minus(TWO_WEEKS) : season.from();
        SeasonAxis axis = SeasonAxis.ahead(from, formats.now());
        SeasonPictures pictures = new SeasonPictures(formats, axis);
        List<SeasonChart> charts = season.series().stream().map(pictures::draw).toList();
        String here = "/tanks/" + known.tank().code();
        return new TankPage.Season(charts, axis.days(known.tank().zone(), formats),
                SeasonEvents.of(known.input().observations(), season.development(), axis, formats),
                List.of(new TankPage.Span("The season", here, !twoWeeks),
                        new TankPage.Span("Two weeks", here + "?span=weeks", twoWeeks)),
                CAPTION, SeasonNumbers.of(season.series(), from, formats));
    }
}
