package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.db.schema.Tables.LOTS;
import static org.tankrounds.db.schema.Tables.SEASONS;
import static org.tankrounds.db.schema.Tables.TANKS;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tankrounds.belief.Observation;
import org.tankrounds.belief.TankFacts;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.LastLooks;
import org.tankrounds.readings.ObservationRepository;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.DeathCauseRepository;
import org.tankrounds.season.LotRepository;
import org.tankrounds.season.SeasonReads;
import org.tankrounds.season.SeasonRepository;
import org.tankrounds.season.Stock;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.CommandRun;
import org.tankrounds.testing.TestApp;
import picocli.CommandLine;

/**
 * One chapter's facts and readings, told to the service and written into two files: the same ranking comes of both.
 *
 * <p>What one of the two cannot know stays different, and is left out here: a chiller's set-point, the school's
 * elevation and a first feeding that was seen, for which a file has no column; the step of the tank's own card where
 * a value has none; "below" a level other than 0; that somebody has said an unlikely value is right, or posted it
 * from a clock that runs ahead. And the temperature for oxygen in % may come to the service when the oxygen is stored
 * already.
 */
class RankAndServiceIT {
    private static final TestApp APP = TestApp.shared();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Instant FIRST_LOOK = Instant.parse("2025-12-15T15:05:00Z");
    private static final int SCHOOL_DAYS = 15;
    private static final List<String> COLUMNS = List.of("asOf", "rank", "tank", "chance", "exposure", "driver",
            "hoursToLimit", "readingAgeHours");

    @TempDir
    private Path folder;

    private final Cast cast = Cast.add(APP.transactions(), "Told twice");
    private final String eggs = cast.tankA().code();
    private final String bare = cast.tankB().code();
    private final String salty = "saltwhistle";
    private final String silent = "hushthimble";
    private final String expecting = "soonthimble";
    private final List<Look> looks = new ArrayList<>();

    /** What somebody read of a tank at one time. */
    private record Look(String tank, Instant at, List<Value> values) {
        String json(String key) {
            return """
                    {"tank": "%s", "key": "%s", "measuredAt": "%s", "values": [%s]}""".formatted(tank, key, at,
                    values.stream().map(Value::json).collect(Collectors.joining(", ")));
        }

        String csv() {
            return values.stream().map(value -> tank + "," + at + "," + value.csv() + "\n")
                    .collect(Collectors.joining());
        }
    }

    /** @param unit as the file has it, such as {@code mg/L as N} */
    private record Value(String analyte, double value, String unit, String step, boolean below) {
        String json() {
            String[] form = unit.split(" as ");
            return "{\"analyte\": \"" + analyte + "\", \"value\": " + value + ", \"unit\": \"" + form[0] + "\""
                    + (form.length > 1 ? ", \"as\": \"" + form[1] + "\"" : "")
                    + (step.isEmpty() ? "" : ", \"step\": " + step) + (below ? ", \"below\": true" : "") + "}";
        }

        String csv() {
            return analyte + "," + value + "," + unit + "," + step;
        }
    }

    @BeforeEach
    void fiveTanksAndFourWeeks() throws IOException {
        addTanks();
        for (int i = 0; i < SCHOOL_DAYS; i++) {
            Instant at = FIRST_LOOK.plus(Duration.ofDays(2L * i));
            readEggs(at, i);
            readSalty(at, i);
            readBare(at, i);
        }
        add(eggs, "2025-05-19T14:00:00Z", value("temperature", 19.7, "Cel", ""), value("deaths", 31, "1", ""));
        add(bare, "2026-01-04T14:00:00Z", value("ph", 9.4, "[pH]", "0.3"));
        add(salty, "2026-01-12T20:30:00Z", value("chlorine", 0.02, "mg/L", "0.02"));
        add(silent, "2026-01-12T14:10:00Z", value("dissolved_oxygen", 65, "%", "1"));
        add(silent, "2026-01-12T18:00:00Z", value("temperature", 5.3, "Cel", ""));
        add(silent, "2026-01-12T13:40:00Z", value("temperature", 33, "Cel", ""));
        add(silent, "2026-01-12T08:20:00Z", value("temperature", 62.7, "[degF]", "1"));
        add(expecting, "2026-01-11T14:10:00Z", value("temperature", 12.7, "Cel", ""), value("ph", 6.7, "[pH]", "0.3"));
        looks.add(looks.get(0));
        post();
        writeFiles();
    }

    @Test
    void sameFactsAndReadings_giveTheSameNumbers() throws IOException {
        for (String asOf : List.of("2026-01-04T17:20:00Z", "2026-01-13T13:30:00Z")) {
            assertThat(byService(asOf)).as("at %s", asOf).hasSize(5).isEqualTo(byCommand(asOf));
        }
    }

    /** What the published decimals might hide. */
    @Test
    void sameFactsAndReadings_reachTheEngineDigitByDigit() {
        Instant asOf = Instant.parse("2026-01-13T13:30:00Z");
        Map<String, TankFacts> facts = TanksCsv.read(folder.resolve("tanks.csv"));
        Map<String, List<Observation>> readings =
                ReadingsCsv.read(folder.resolve("readings.csv"), facts.keySet(), System.err::println);
        assertThat(inputs(asOf)).hasSize(5).allSatisfy(input -> {
            String tank = input.tank().code();
            assertThat(input.facts()).isEqualTo(facts.get(tank));
            Instant from = input.facts().seasonFrom(asOf);
            assertThat(input.observations()).containsExactlyInAnyOrderElementsOf(
                    readings.getOrDefault(tank, List.of()).stream().filter(o -> o.at().isAfter(from)).toList());
        });
    }

    private List<TankInput> inputs(Instant asOf) {
        TankInputs inputs = new TankInputs(new LotRepository(),
                new Stock(new SeasonReads(new SeasonRepository(), new LotRepository(), new CountRepository(),
                        new DeathCauseRepository(), new TankRepository(), new ObservationRepository())),
                new ObservationRepository(), new LastLooks());
        return APP.transactions().inChapter(cast.chapterId(), tx ->
                new TankRepository().listOfChapter(tx, cast.chapterId()).stream()
                        .map(tank -> inputs.load(tx, cast.chapterId(), tank, asOf)).toList());
    }

    private void readEggs(Instant at, int i) {
        add(eggs, at, value("temperature", (5030 + 37 * i) / 100.0, "[degF]", "1"), value("ph", 7.1, "[pH]", "0.3"),
                value("total_ammonia", i / 10.0, "mg/L as NH3", "0.25"),
                value("nitrite", i / 20.0, "mg/L as NO2", "0.15"),
                value("dissolved_oxygen", 93.5 - i, "%", "1"), value("deaths", i % 3, "1", ""));
    }

    private void readSalty(Instant at, int i) {
        add(salty, at.plus(Duration.ofMinutes(7)), value("temperature", (1330 + 13 * i) / 100.0, "Cel", ""),
                value("total_ammonia", 0.7, "mg/L as NH4", "0.3"), value("nitrite", 0.21, "mg/L as N", "0.1"),
                value("nitrate", 11.7, "mg/L as NO3", "5"), value("alkalinity", 3.7, "[dH]", "1"),
                value("chloride", 17.3, "mg/L", ""), value("feed", 4.3, "g", ""));
        if (i % 4 == 0) {
            add(salty, at.plus(Duration.ofHours(1)), value("water_change", 22.5, "%", ""));
        }
    }

    private void readBare(Instant at, int i) {
        add(bare, at.minus(Duration.ofHours(5)), value("temperature", 51.7, "[degF]", ""),
                value("dissolved_oxygen", 9.7, "mg/L", ""), value("ph", 6.9, "[pH]", "0.3"),
                new Value("nitrite", 0, "mg/L as NO2", "0.3", i % 2 == 0),
                value("total_ammonia", 0.4, "mg/L as N", "0.3"));
    }

    private void add(String tank, String at, Value... values) {
        add(tank, Instant.parse(at), values);
    }

    private void add(String tank, Instant at, Value... values) {
        looks.add(new Look(tank, at, List.of(values)));
    }

    private static Value value(String analyte, double value, String unit, String step) {
        return new Value(analyte, value, unit, step, false);
    }

    /** Nothing that the files have no column for: no set-point, no first feeding that somebody saw. */
    private void addTanks() {
        APP.transactions().inChapter(cast.chapterId(), tx -> {
            tx.update(TANKS).setNull(TANKS.CHILLER_SET_POINT_C).where(TANKS.CHAPTER_ID.eq(cast.chapterId()))
                    .execute();
            int room = tx.select(TANKS.CLASSROOM_ID).from(TANKS).where(TANKS.TANK_ID.eq(cast.tankA().tankId()))
                    .fetchSingle(TANKS.CLASSROOM_ID);
            for (String code : List.of(salty, silent, expecting)) {
                tx.insertInto(TANKS).set(TANKS.CHAPTER_ID, cast.chapterId()).set(TANKS.CLASSROOM_ID, room)
                        .set(TANKS.KIT_ID, cast.kitId()).set(TANKS.CODE, code).set(TANKS.VOLUME_L, 189.3f)
                        .set(TANKS.SOURCE_ALKALINITY_MG_L, 61.3f).set(TANKS.SOURCE_CHLORIDE_MG_L, 17.9f).execute();
            }
            return addLot(tx, salty, 143, "2025-10-21T16:00:00Z") + addLot(tx, expecting, 83, "2026-01-20T15:00:00Z");
        });
    }

    private int addLot(DSLContext tx, String tank, int count, String receivedAt) {
        return tx.insertInto(LOTS).set(LOTS.CHAPTER_ID, cast.chapterId())
                .set(LOTS.SEASON_ID, DSL.select(SEASONS.SEASON_ID).from(SEASONS)
                        .where(SEASONS.CODE.eq(cast.season())))
                .set(LOTS.TANK_ID, DSL.select(TANKS.TANK_ID).from(TANKS)
                        .where(TANKS.CHAPTER_ID.eq(cast.chapterId())).and(TANKS.CODE.eq(tank)))
                .set(LOTS.EGGS, count).set(LOTS.RECEIVED_AT, Instant.parse(receivedAt)).execute();
    }

    private void writeFiles() throws IOException {
        Files.writeString(folder.resolve("tanks.csv"), """
                tank,volume_l,eggs,eggs_received_at,thermal_units_c,source_alkalinity_mg_l,chloride_mg_l,time_zone
                %s,200,200,2025-11-04T10:00:00-05:00,180,,,America/New_York
                %s,200,,,,,,America/New_York
                %s,189.3,143,2025-10-21,,61.3,17.9,America/New_York
                %s,189.3,,,,61.3,17.9,America/New_York
                %s,189.3,83,2026-01-20T15:00:00Z,,61.3,17.9,America/New_York
                """.formatted(eggs, bare, salty, silent, expecting));
        Files.writeString(folder.resolve("readings.csv"), "tank,measured_at,analyte,value,unit,step\n"
                + looks.stream().map(Look::csv).collect(Collectors.joining()));
    }

    /** The last line is the first again, under a key of its own. */
    private void post() {
        String lines = IntStream.range(0, looks.size()).mapToObj(i -> looks.get(i).json("look " + i))
                .collect(Collectors.joining("\n"));
        Answer answer = APP.bearer(cast.chapterToken()).send("POST", "/api/v1/readings:batch",
                "application/x-ndjson", lines.getBytes(StandardCharsets.UTF_8));
        assertThat(answer.body().lines()).hasSize(looks.size())
                .allMatch(line -> line.contains("\"status\":201"));
    }

    private List<List<Object>> byService(String asOf) throws IOException {
        String body = APP.bearer(cast.chapterToken()).get("/api/v1/rounds?asOf=" + asOf).body();
        return StreamSupport.stream(JSON.readTree(body).get("rounds").spliterator(), false)
                .map(row -> COLUMNS.stream().map(column -> cell(row.get(column).asText(""))).toList()).toList();
    }

    /** JSON leaves out zeros at the end of a number. */
    private static Object cell(String text) {
        return text.matches("[0-9.]+") ? Double.valueOf(text) : text;
    }

    private List<List<Object>> byCommand(String asOf) {
        CommandRun run = CommandRun.of(new CommandLine(new RankCommand()), List.of("--as-of", asOf,
                "--tanks", folder.resolve("tanks.csv").toString(),
                "--readings", folder.resolve("readings.csv").toString()));
        assertThat(run.err()).isEmpty();
        return run.lines().stream().skip(1)
                .map(line -> Stream.of(line.split(",", -1)).map(RankAndServiceIT::cell).toList()).toList();
    }
}
