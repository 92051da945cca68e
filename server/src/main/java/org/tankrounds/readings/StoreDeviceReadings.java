package org.tankrounds.readings;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.LastTemperatures.Moment;
import org.tankrounds.readings.MeasurementRepository.Rows;
import org.tankrounds.readings.StoreReading.Sender;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.KnownTemperatures;
import org.tankrounds.web.Secrets;

/** Writes what a logger or a probe brought, many readings at a time, within somebody's transaction. */
final class StoreDeviceReadings {
    private static final int LOCK = 0x64657669;
    private static final int ROWS_A_STATEMENT = 2_000;

    /** Where readings go, and from whom they come. */
    record Target(int chapterId, Tank tank, Kit kit, String channel, Sender sender, Instant now) {}

    private final ReadingRepository readings;
    private final DirtyTanks dirtyTanks;
    private final MeasurementRepository measurements = new MeasurementRepository();
    private final LastTemperatures lastTemperatures = new LastTemperatures();

    StoreDeviceReadings(ReadingRepository readings, DirtyTanks dirtyTanks) {
        this.readings = readings;
        this.dirtyTanks = dirtyTanks;
    }

    /** From here until the transaction ends nobody else finds out what of a tank is new. */
    static void alone(DSLContext tx, int tankId) {
        tx.execute("SELECT pg_advisory_xact_lock(?, ?)", LOCK, tankId);
    }

    /** @return what was written */
    List<Reading> store(DSLContext tx, Target to, List<GivenReading> given) {
        List<JudgedReading> judged = judge(tx, to, given);
        List<Reading> written = new ArrayList<>();
        for (int from = 0; from < judged.size(); from += ROWS_A_STATEMENT) {
            written.addAll(write(tx, to, judged.subList(from, Math.min(judged.size(), from + ROWS_A_STATEMENT))));
        }
        if (!written.isEmpty()) {
            mark(tx, to);
        }
        return written;
    }

    /** The tank's forecast is out of date. */
    void mark(DSLContext tx, Target to) {
        dirtyTanks.mark(tx, to.chapterId(), to.tank().tankId(), to.now());
    }

    /** Readings that hold again: what the engine takes in of them is worked out once more. */
    void bringBack(DSLContext tx, Target to, Collection<Reading> again) {
        List<Rows> rows = again.stream().map(reading -> rows(tx, to, reading)).toList();
        measurements.insert(tx, to.chapterId(), rows);
    }

    private Rows rows(DSLContext tx, Target to, Reading reading) {
        GivenReading given = new GivenReading(Optional.of(reading.measuredAt()), reading.flags().stream()
                .filter(Judge.TIME_DOUBTFUL::equals).toList(), reading.by(), reading.note(),
                reading.values().stream().map(DeviceValues::given).toList());
        Set<Analyte> confirmed = reading.values().stream().map(EnteredValue::analyte)
                .filter(analyte -> reading.flags().contains("confirmed:" + analyte.code())).collect(Collectors.toSet());
        JudgedReading judged = Judge.judge(given, known(tx, to, List.of(given)), confirmed, new Faults());
        return new Rows(reading.tankId(), reading.readingId(), reading.measuredAt(), judged.measured());
    }

    private List<JudgedReading> judge(DSLContext tx, Target to, List<GivenReading> given) {
        Judge.Known known = known(tx, to, given);
        Faults faults = new Faults();
        List<JudgedReading> judged = given.stream().map(one -> Judge.judge(one, known, Set.of(), faults)).toList();
        faults.refuse();
        return judged;
    }

    /** Oxygen in % of saturation is taken at the temperature beside it, else at the tank's last. */
    private Judge.Known known(DSLContext tx, Target to, List<GivenReading> given) {
        List<Moment> moments = given.stream().filter(Judge::needsLastTemperature)
                .map(one -> new Moment(to.tank().tankId(), one.measuredAt().orElseThrow())).toList();
        KnownTemperatures temperatures = moments.isEmpty() ? new KnownTemperatures()
                : lastTemperatures.findAll(tx, to.chapterId(), moments).get(to.tank().tankId());
        return new Judge.Known(to.tank(), to.kit(), to.now(), temperatures::at);
    }

    private List<Reading> write(DSLContext tx, Target to, List<JudgedReading> judged) {
        List<Reading> rows = judged.stream().map(one -> StoreReading.version(to.tank(),
                Secrets.code(StoreReading.CODE_LENGTH), 1, to.channel(), to.sender(), to.now(), one, Optional.empty()))
                .toList();
        Map<String, Long> readingIds = readings.insertAll(tx, to.chapterId(), rows);
        List<Rows> measured = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            measured.add(new Rows(to.tank().tankId(), readingIds.get(rows.get(i).code()), rows.get(i).measuredAt(),
                    judged.get(i).measured()));
        }
        measurements.insert(tx, to.chapterId(), measured);
        return rows;
    }
}
