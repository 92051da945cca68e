package org.tankrounds.readings;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.pages.LogPage.Receipt;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Caller;

/** What a class reads after it kept a reading: that it is stored, what was, and who sees it. */
public final class SavedReceipt {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);

    private final ReadingRepository readings;
    private final ObservationRepository observations;

    public SavedReceipt(ReadingRepository readings, ObservationRepository observations) {
        this.readings = readings;
        this.observations = observations;
    }

    /** @param code of the reading, as it stands behind {@code saved=} in the address; may be anything */
    public Receipt find(DSLContext tx, Caller caller, Tank tank, Optional<String> code) {
        return code.filter(given -> given.matches("[a-z0-9]{1,40}"))
                .flatMap(saved -> readings.findHolding(tx, caller.chapterId(), tank.tankId(), saved))
                .map(reading -> receipt(tx, caller, tank, reading))
                .orElse(Receipt.NONE);
    }

    private Receipt receipt(DSLContext tx, Caller caller, Tank tank, Reading reading) {
        ZoneId zone = tank.zone();
        StringBuilder sentence = new StringBuilder("Saved ").append(TIME.format(reading.receivedAt().atZone(zone)));
        String values = reading.values().stream()
                .map(value -> Wording.lower(value.analyte()) + " " + Wording.value(value))
                .collect(Collectors.joining(", "));
        sentence.append(values.isEmpty() ? ": your note" : ": " + values).append(". ");
        sentence.append(TestsInARow.upTo(observations, tx, caller.chapterId(), reading)
                .map(found -> found + " ").orElse(""));
        if (reading.flags().stream().anyMatch(flag -> flag.startsWith("confirmed:"))) {
            sentence.append("Kept as you confirmed it, and marked as unusual. ");
        }
        if (reading.timeDoubtful()) {
            sentence.append("Its time is doubtful: correct it in the tank’s log. ");
        }
        return new Receipt(sentence + "Your coordinator sees this.",
                caller.signedIn() ? "/tanks/" + tank.code() + "/readings/" + reading.code() : "");
    }
}
