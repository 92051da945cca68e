package org.tankrounds.readings;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.StoreReading.Submitted;
import org.tankrounds.water.Analyte;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Secrets;

/**
 * A reading that comes along with something else that is written down, in the same transaction, and goes with it. It is
 * judged as any other; what is unlikely is kept as doubtful, for nobody is asked back.
 */
public final class AlongReadings {
    private final StoreReading storeReading;
    private final CorrectReading correctReading;

    public AlongReadings(StoreReading storeReading, CorrectReading correctReading) {
        this.storeReading = storeReading;
        this.correctReading = correctReading;
    }

    /** @param unit one that the analyte is accepted in */
    public record Value(Analyte analyte, BigDecimal value, String unit) {}

    /**
     * @param submission by which it is stored once
     * @param by label of the class
     * @param values possible ones
     * @return the reading's code; empty where there is no value
     */
    public Optional<String> write(DSLContext tx, Caller caller, Tank tank, UUID submission, Instant at, String by,
            List<Value> values) {
        if (values.isEmpty()) {
            return Optional.empty();
        }
        List<GivenValue> given = values.stream().map(one -> new GivenValue("", one.analyte(), one.value(), one.unit(),
                Optional.empty(), Optional.empty(), false, false)).toList();
        GivenReading reading = new GivenReading(Optional.of(at), Optional.of(by), Optional.empty(), given);
        byte[] fingerprint = Secrets.sha256(reading.toString().getBytes(StandardCharsets.UTF_8));
        return Optional.of(storeReading.alongside(tx, caller, tank, Reading.CHANNEL_PAGE, kit -> new Submitted(
                submission.toString(), fingerprint, reading, new Faults(), kit, Set.of())).reading().code());
    }

    /** @param reason told on the reading's page */
    public void takeBack(DSLContext tx, Caller caller, Tank tank, String code, String reason) {
        correctReading.takeBackAlong(tx, caller, tank, code, reason);
    }
}
