package org.tankrounds.rounds;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.advice.Remedy;
import org.tankrounds.behaviour.Alarm;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.eggday.EggDayDoor;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.pages.SeasonChart;
import org.tankrounds.pages.TankPage;
import org.tankrounds.pages.WaysPicture;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.LastLook;
import org.tankrounds.readings.Reading;
import org.tankrounds.tasks.Task;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;

/** From what is known of a tank to its page. */
final class TankPages {
    private static final Duration TWO_WEEKS = Duration.ofDays(14);

    /** What one page is made of. */
    record Known(TankInput input, Optional<TankForecast> forecast, List<Reading> log,
            List<Reading> takenBack, List<DeviceDay> days, Optional<Reading> saved, SeenLately seen, List<Task> tasks,
            Optional<EggDayDoor.Door> eggDay) {
        Tank tank() {
            return input.tank();
        }
    }

    private final Caller caller;
    private final Formats formats;
    private final Speech speech;
    private final TankHeading heading;
    private final TankHolding holding;
    private final TankLog log;
    private final WaysPictures ways;
    private final ReasonWording wording;
    private final ActWording acts;
    private final EffectWording effects;

    TankPages(Caller caller, Formats formats) {
        this.caller = caller;
        this.formats = formats;
        this.speech = formats.speech();
        this.heading = new TankHeading(formats);
        this.holding = new TankHolding(formats);
        this.log = new TankLog(formats);
        this.ways = new WaysPictures(formats);
        this.wording = new ReasonWording(formats);
        this.acts = new ActWording(formats);
        this.effects = new EffectWording(formats);
    }

    TankPage page(Known known, boolean twoWeeks) {
        Tank tank = known.tank();
        TankSeason season = TankSeason.of(known.input(), known.forecast(), formats.now());
        return new TankPage(
                heading.of(tank, known.forecast(), known.seen()),
                backText(), caller.role() == Role.TEACHER ? "/tanks" : "/rounds",
                tank.school(), about(known), doors(known), saved(known), tank.code(),
                advice(known), together(known), tasks(known),
                reasons(known), ways(known), NarrowWording.readingOrFact(known.input(), known.forecast())
                        .map(speech::say).orElse(""),
                pictures(known, season, twoWeeks),
                holding.facts(known.input(), known.forecast(), season.development()),
                log.rows(tank.code(), known.log(), known.days(), caller.signedIn()), takenBack(known),
                caller.role() != Role.MENTOR, caller.signedIn(), List.of(Role.IN_CHARGE).contains(caller.role()));
    }

    /** Only whoever may correct a reading may look at one that was taken back. */
    private List<TankPage.Link> takenBack(Known known) {
        return !caller.signedIn() ? List.of() : known.takenBack().stream().map(reading -> new TankPage.Link(
                speech.say("tank.log.takenBack.of", formats.full(reading.measuredAt())),
                "/tanks/" + known.tank().code() + "/readings/" + reading.code())).toList();
    }

    /** A class with its card receives no eggs by itself. */
    private List<TankPage.Link> doors(Known known) {
        return !caller.signedIn() ? List.of() : known.eggDay().stream().map(door -> new TankPage.Link(
                speech.say("eggday.stop.door", speech.written("time.pattern.date", door.day())), door.to())).toList();
    }

    private String backText() {
        return switch (caller.role()) {
            case TEACHER -> speech.say("frame.myTanks");
            case CLASS_CARD -> "";
            default -> speech.say("frame.rounds");
        };
    }

    private String about(Known known) {
        String last = known.forecast().flatMap(TankForecast::lastLook).or(known.input()::lastLook)
                .map(this::last).orElseGet(() -> speech.say("tank.noReading"));
        return Formats.significant(known.tank().volumeL(), 3) + " L · " + last;
    }

    private String last(LastLook look) {
        return look.by().isEmpty() ? speech.say("tank.lastReading", formats.moment(look.at()))
                : speech.say("tank.lastReadingBy", formats.moment(look.at()), look.by());
    }

    private WaysPicture ways(Known known) {
        return known.forecast().flatMap(row -> row.ways()
                .map(ways -> this.ways.draw(row.forecast(), ways))).orElse(null);
    }

    private List<TankPage.Advice> advice(Known known) {
        Stream<TankPage.Advice> worked = known.forecast().stream().flatMap(row -> row.advice().remedies().stream()
                .map(remedy -> words(remedy, row.forecast(), known.tank())));
        return Stream.concat(inTrouble(known).stream(), worked).toList();
    }

    /** What was seen is not in the forecast, so its advice does not know of it. */
    private Optional<TankPage.Advice> inTrouble(Known known) {
        return known.seen().alarm(stage(known)) == Alarm.ACT ? Optional.of(new TankPage.Advice(
                speech.say("advice.trouble"), speech.say("advice.trouble.how"), speech.say("advice.mains")))
                : Optional.empty();
    }

    private static Stage stage(Known known) {
        return known.forecast().map(row -> row.forecast().stage()).orElse(Stage.FEEDING);
    }

    private TankPage.Advice words(Remedy remedy, Forecast forecast, Tank tank) {
        return acts.of(remedy.act(), forecast.stage().isBeforeFirstFeeding(), tank.hasChloramine())
                .withEffect(effects.alone(remedy));
    }

    private String together(Known known) {
        return known.forecast().flatMap(row -> row.advice().together()
                .map(effect -> effects.together(effect, row.forecast().asOf()))).orElse("");
    }

    private String saved(Known known) {
        return known.saved().map(reading -> Phrase.joined(
                speech.say("tank.saved", formats.clock(reading.receivedAt())),
                known.forecast().map(row -> counted(reading, row.forecast().asOf())).orElse(""),
                speech.say("tank.seen"))).orElse("");
    }

    private String counted(Reading reading, Instant asOf) {
        if (reading.measuredAt().isAfter(formats.now())) {
            return speech.say("tank.countsFrom", formats.full(reading.measuredAt()));
        }
        if (reading.timeDoubtful()) {
            return speech.say("tank.timeDoubtful");
        }
        boolean counts = !asOf.isBefore(reading.measuredAt()) && !asOf.isBefore(reading.receivedAt());
        return speech.say(counts ? "tank.counts" : "tank.countsNotYet");
    }

    private List<TankPage.Sentence> reasons(Known known) {
        Stream<TankPage.Sentence> read = known.forecast().stream()
                .flatMap(row -> wording.of(row.forecast().reasons()).stream())
                .map(phrase -> new TankPage.Sentence(phrase.lead(), phrase.rest()));
        return Stream.concat(seen(known).stream(), read).toList();
    }

    private Optional<TankPage.Sentence> seen(Known known) {
        return Optional.of(SeenWording.sentences(known.seen(), stage(known), formats)).filter(text -> !text.isEmpty())
                .map(text -> new TankPage.Sentence(text, ""));
    }

    /** What the class was asked, and what it ticked. */
    private List<String> tasks(Known known) {
        return known.tasks().stream().map(task -> task.doneAt()
                .map(at -> speech.say("tank.task.done", formats.moment(at), task.words()))
                .orElseGet(() -> speech.say("tank.task.asked", formats.moment(task.askedAt()), task.words()))).toList();
    }

    private TankPage.Season pictures(Known known, TankSeason season, boolean twoWeeks) {
        Instant from = twoWeeks ? formats.now().minus(TWO_WEEKS) : season.from();
        SeasonAxis axis = SeasonAxis.ahead(from, formats.now());
        SeasonPictures pictures = new SeasonPictures(formats, axis);
        List<SeasonChart> charts = season.series().stream().map(pictures::draw).toList();
        String here = "/tanks/" + known.tank().code();
        return new TankPage.Season(charts, axis.days(known.tank().zone(), formats),
                SeasonEvents.of(known.input().observations(), season.development(), axis, formats),
                List.of(new TankPage.Span(speech.say("tank.span.season"), here, !twoWeeks),
                        new TankPage.Span(speech.say("tank.span.weeks"), here + "?span=weeks", twoWeeks)),
                speech.say("pictures.caption"), SeasonNumbers.of(season.series(), from, formats));
    }
}
