package org.tankrounds.eggday;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.AlongReadings;
import org.tankrounds.season.LotEdits;
import org.tankrounds.season.LotWithdrawal;
import org.tankrounds.season.SeenOn;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/**
 * Books a receipt in one transaction: the receipt, the lot that the tank's count begins with, and a reading with the
 * dead and with what the tank's water read. Eggs that came dead are among the lot's and among the dead of the readings,
 * so that they are counted once.
 */
public final class BookReceipt {
    private final EggReads reads;
    private final LotEdits lots;
    private final LotWithdrawal withdrawal;
    private final AlongReadings readings;
    private final Clock clock;

    public BookReceipt(EggReads reads, LotEdits lots, LotWithdrawal withdrawal, AlongReadings readings, Clock clock) {
        this.reads = reads;
        this.lots = lots;
        this.withdrawal = withdrawal;
        this.readings = readings;
        this.clock = clock;
    }

    /**
     * @param known behind a lock of the run
     * @return why it cannot be; empty where it was written, or the same form was before
     */
    Optional<Saying> write(DSLContext tx, Caller caller, KnownRun known, EggStop stop, UUID submission,
            EggReceipt.Details details, Formats formats) {
        int chapterId = caller.chapterId();
        Optional<EggReceipt> same = reads.receipts().writtenBy(tx, chapterId, stop.stopId(), submission);
        if (same.filter(EggReceipt::holds).filter(one -> one.details().saysAs(details)).isPresent()) {
            return Optional.empty();
        }
        if (same.filter(one -> !one.holds()).isPresent()) {
            return Optional.of(Saying.of("eggday.receipt.used"));
        }
        Optional<EggReceipt> before = known.receipt(stop);
        if (before.isPresent()) {
            return Optional.of(Saying.of("eggday.receipt.already", before.get().details().eggs(),
                    formats.dateAndClock(before.get().details().receivedAt()), before.get().by()));
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        Tank tank = known.tank(stop);
        int lotId = lots.add(tx, chapterId, known.season().seasonId(), tank.tankId(), lot(known.run(), details), now);
        Optional<String> reading = readings.write(tx, caller, tank, submission, details.receivedAt(),
                details.classLabel(), values(stop, details, formats.speech().scale()));
        reads.receipts().add(tx, chapterId, stop.stopId(), submission, details, lotId, reading,
                caller.personId().orElseThrow(), now);
        return Optional.empty();
    }

    /** @return false where the count needs its eggs by now; the caller rolls back */
    boolean takeBack(DSLContext tx, Caller caller, KnownRun known, EggStop stop, Speech speech) {
        Optional<EggReceipt> receipt = known.receipt(stop);
        if (receipt.isEmpty()) {
            return true;
        }
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        int chapterId = caller.chapterId();
        Tank tank = known.tank(stop);
        reads.receipts().withdraw(tx, chapterId, receipt.get().receiptId(), caller.personId().orElseThrow(), now);
        receipt.get().readingCode().ifPresent(code ->
                readings.takeBack(tx, caller, tank, code, speech.say("eggday.receipt.takenBack.reason")));
        return withdrawal.withdraw(tx, chapterId, known.season(), tank, receipt.get().lotId(), now);
    }

    private static LotEdits.Details lot(EggRun run, EggReceipt.Details details) {
        return new LotEdits.Details(details.eggs(), details.receivedAt(), run.details().thermalUnitsC(),
                run.details().supplier(), run.details().certificate(), SeenOn.NOTHING, details.method(),
                details.spread());
    }

    /** @param scale on which the temperature was typed */
    private static List<AlongReadings.Value> values(EggStop stop, EggReceipt.Details details, Scale scale) {
        List<AlongReadings.Value> values = new ArrayList<>();
        stop.tempered().ifPresent(tempered -> {
            values.add(new AlongReadings.Value(Analyte.TEMPERATURE, BigDecimal.valueOf(scale.of(tempered.tankC()))
                    .setScale(1, RoundingMode.HALF_UP), scale.unit()));
            tempered.ph().ifPresent(ph -> values.add(
                    new AlongReadings.Value(Analyte.PH, BigDecimal.valueOf(ph), "[pH]")));
        });
        details.dead().ifPresent(dead ->
                values.add(new AlongReadings.Value(Analyte.DEATHS, BigDecimal.valueOf(dead), "1")));
        return values;
    }
}
