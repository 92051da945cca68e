package org.tankrounds.rounds;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.behaviour.SeenLately;
import org.tankrounds.db.Transactions;
import org.tankrounds.eggday.EggDayDoor;
import org.tankrounds.pages.DeviceDayPage;
import org.tankrounds.pages.MyTanksPage;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.DeviceDay;
import org.tankrounds.readings.DeviceDays;
import org.tankrounds.readings.Reading;
import org.tankrounds.readings.ReadingRepository;
import org.tankrounds.tasks.Task;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** The page of one tank, and a teacher's list of them. */
public final class TankHandlers {
    static final int LOG_ROWS = 20;
    private static final Duration TAKEN_BACK_LATELY = Duration.ofDays(30);
    private static final int MOST_TAKEN_BACK = 5;
    private static final String TWO_WEEKS = "weeks";

    private final Transactions transactions;
    private final Clock clock;
    private final TankRepository tanks;
    private final TankInputs inputs;
    private final ForecastRepository forecasts;
    private final ReadingRepository readings;
    private final DeviceDays deviceDays;
    private final LookRepository looks;
    private final TaskRepository tasks;
    private final EggDayDoor eggDays;
    private final Pages pages;
    private final ObjectMapper json;

    public TankHandlers(
            Transactions transactions, Clock clock, TankRepository tanks, TankInputs inputs,
            ForecastRepository forecasts, ReadingRepository readings, LookRepository looks,
            TaskRepository tasks, EggDayDoor eggDays, Pages pages, ObjectMapper json) {
        this.transactions = transactions;
        this.clock = clock;
        this.tanks = tanks;
        this.inputs = inputs;
        this.forecasts = forecasts;
        this.readings = readings;
        this.deviceDays = new DeviceDays(readings);
        this.looks = looks;
        this.tasks = tasks;
        this.eggDays = eggDays;
        this.pages = pages;
        this.json = json;
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        TankPages.Known known = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            return known(tx, caller.chapterId(), tank, Optional.ofNullable(ctx.queryParam("saved")), now);
        });
        TankPages maker = new TankPages(caller, Speech.of(ctx).formats(known.tank().zone(), now));
        pages.show(ctx, "tanks/tank", maker.page(known, TWO_WEEKS.equals(ctx.queryParam("span"))));
    }

    /** For the exploring script. */
    public void series(Context ctx) throws JsonProcessingException {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        ObjectNode body = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            Optional<TankForecast> forecast = forecasts.find(tx, caller.chapterId(), tank.tankId());
            TankInput input = inputs.load(tx, caller.chapterId(), tank, now);
            Instant asOf = forecast.map(row -> row.forecast().asOf()).orElse(now);
            return new SeriesJson(Speech.of(ctx)).of(TankSeason.of(input, forecast, now), asOf);
        });
        ctx.contentType("application/json").result(json.writeValueAsBytes(body));
    }

    /** Each reading of a day on which a device read often. */
    public void day(Context ctx) {
        Caller caller = Caller.of(ctx);
        LocalDate day = Asked.day(ctx);
        DeviceDayPage page = transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, ctx.pathParam("tank"));
            DeviceDay found = deviceDays.find(tx, caller.chapterId(), tank, day)
                    .orElseThrow(() -> new NotFoundException("day"));
            List<Reading> each = deviceDays.list(tx, caller.chapterId(), tank, day);
            return new DayPages(Speech.of(ctx).formats(tank.zone(), clock.instant())).page(caller, tank, found, each);
        });
        pages.show(ctx, "tanks/day", page);
    }

    /** The teacher's own tanks; with one, that one. */
    public void list(Context ctx) {
        Caller caller = Caller.of(ctx);
        Instant now = clock.instant();
        Speech speech = Speech.of(ctx);
        List<MyTanksPage.Entry> entries = transactions.inChapter(caller.chapterId(), tx ->
                tanks.list(tx, caller).stream()
                        .map(tank -> entry(tank, forecasts.find(tx, caller.chapterId(), tank.tankId()),
                                seen(tx, caller.chapterId(), tank, now), speech.formats(tank.zone(), now)))
                        .toList());
        if (entries.size() == 1) {
            ctx.redirect(entries.get(0).to(), HttpStatus.SEE_OTHER);
            return;
        }
        pages.show(ctx, "tanks/mine", new MyTanksPage(
                speech.say(entries.isEmpty() ? "tank.mine.none" : "frame.myTanks"), entries));
    }

    private SeenLately seen(DSLContext tx, int chapterId, Tank tank, Instant now) {
        return looks.latelyIn(tx, chapterId, tank.tankId(), now);
    }

    private static MyTanksPage.Entry entry(
            Tank tank, Optional<TankForecast> forecast, SeenLately seen, Formats formats) {
        Speech speech = formats.speech();
        String last = forecast.flatMap(TankForecast::lastLook)
                .map(look -> speech.say("tank.mine.lastReading", formats.moment(look.at())))
                .orElseGet(() -> speech.say("tank.mine.noReading"));
        return new MyTanksPage.Entry(
                tank.code(), tank.school(), new TankHeading(formats).of(tank, forecast, seen), last);
    }

    private TankPages.Known known(
            DSLContext tx, int chapterId, Tank tank, Optional<String> savedCode, Instant now) {
        TankInput input = inputs.load(tx, chapterId, tank, now);
        List<DeviceDay> days = deviceDays.newest(tx, chapterId, tank, LOG_ROWS);
        List<Reading> log = deviceDays.listOthers(tx, chapterId, tank, days, LOG_ROWS);
        Optional<Reading> saved =
                savedCode.flatMap(code -> readings.findHolding(tx, chapterId, tank.tankId(), code));
        List<Reading> takenBack = readings.listTakenBack(
                tx, chapterId, tank.tankId(), now.minus(TAKEN_BACK_LATELY), MOST_TAKEN_BACK);
        return new TankPages.Known(input, forecasts.find(tx, chapterId, tank.tankId()), log, takenBack, days, saved,
                seen(tx, chapterId, tank, now),
                tasks.list(tx, chapterId, tank.tankId(), now.minus(Task.LATELY)),
                eggDays.findAt(tx, chapterId, tank, LocalDate.ofInstant(now, tank.zone())));
    }
}
