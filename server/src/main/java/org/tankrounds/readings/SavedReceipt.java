package org.tankrounds.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.pages.LogPage.Receipt;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** What a class reads after it kept a reading: that it is stored, what was, and who sees it. */
public final class SavedReceipt {
    private final ReadingRepository readings;
    private final ObservationRepository observations;

    public SavedReceipt(ReadingRepository readings, ObservationRepository observations) {
        this.readings = readings;
        this.observations = observations;
    }

    /** @param code of the reading, as it stands behind {@code saved=} in the address; may be anything */
    public Receipt find(DSLContext tx, Caller caller, Tank tank, Optional<String> code,
            Speech speech) {
        return code.filter(given -> given.matches("[a-z0-9]{1,40}"))
                .flatMap(saved -> readings.findHolding(tx, caller.chapterId(), tank.tankId(), saved))
                .map(reading -> receipt(tx, caller, tank, reading, speech))
                .orElse(Receipt.NONE);
    }

    private Receipt receipt(DSLContext tx, Caller caller, Tank tank, Reading reading, Speech speech) {
        List<Saying> sentences = new ArrayList<>(List.of(saved(tank, reading, speech)));
        TestsInARow.upTo(observations, tx, caller.chapterId(), reading).ifPresent(sentences::add);
        if (reading.flags().stream().anyMatch(flag -> flag.startsWith("confirmed:"))) {
            sentences.add(Saying.of("log.saved.confirmed"));
        }
        if (reading.timeDoubtful()) {
            sentences.add(Saying.of("log.saved.timeDoubtful"));
        }
        sentences.add(Saying.of("log.saved.seen"));
        return new Receipt(sentences.stream().map(speech::say).collect(Collectors.joining(" ")),
                caller.signedIn() ? "/tanks/" + tank.code() + "/readings/" + reading.code() : "");
    }

    private static Saying saved(Tank tank, Reading reading, Speech speech) {
        String clock = speech.formats(tank.zone(), reading.receivedAt()).clock(reading.receivedAt());
        String values = reading.values().stream()
                .map(value -> speech.say(Wording.inSentence(value.analyte())) + " " + speech.say(Wording.value(value)))
                .collect(Collectors.joining(", "));
        return values.isEmpty() ? Saying.of("log.saved.note", clock) : Saying.of("log.saved.values", clock, values);
    }
}
