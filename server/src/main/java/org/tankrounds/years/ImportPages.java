package org.tankrounds.years;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.ImportPage;
import org.tankrounds.season.Ledger;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Secrets;

/** From a sheet that was copied in to the page that says what is understood of it. */
final class ImportPages {
    private static final int MOST_FAULTS = 20;

    private final Formats formats;

    ImportPages(Formats formats) {
        this.formats = formats;
    }

    /** Names a text, so that another one is looked at before it is kept. */
    static String fingerprint(String text) {
        return HexFormat.of().formatHex(Secrets.sha256(text.getBytes(StandardCharsets.UTF_8)), 0, 8);
    }

    ImportPage page(FormInput form, Optional<PastSheet> sheet, String submissionId, String text) {
        Optional<PastSheet> understood = sheet.filter(known -> known.faults().isEmpty() && form.ok());
        String heading = understood.map(known -> say("years.import.look", known.counted().size()))
                .orElseGet(() -> say("years.import"));
        List<String> faults = new ArrayList<>();
        if (!text.isEmpty()) {
            sheet.ifPresent(known -> known.faults().stream().limit(MOST_FAULTS).forEach(fault -> faults.add(
                    fault.line() == 0 ? formats.speech().say(fault.why())
                            : say("years.sheet.line", fault.line(), formats.speech().say(fault.why())))));
        }
        return new ImportPage(form.titled(heading), heading, submissionId,
                understood.isPresent() ? fingerprint(text) : "",
                List.of(form.textBox(YearHandlers.NAME, "years.name").withHint(say("years.name.hint")),
                        form.dayBox(YearHandlers.ENDED, "years.ended").withHint(say("years.ended.hint"))),
                form.textBox(YearHandlers.SHEET, "years.sheet").withHint(say("years.sheet.hint")), text, faults,
                understood.map(this::rows).orElse(List.of()), understood.map(this::notes).orElse(List.of()));
    }

    private List<ImportPage.Row> rows(PastSheet sheet) {
        List<ImportPage.Row> rows = new ArrayList<>();
        sheet.counted().forEach(one -> rows.add(row(one.place(), one.ledger(), one.deadUnstaged())));
        rows.add(row(say("years.import.total"), sheet.total(), sheet.deadUnstaged()));
        return rows;
    }

    private static ImportPage.Row row(String place, Ledger ledger, int deadUnstaged) {
        return new ImportPage.Row(place, number(ledger.received()), number(ledger.dead() + deadUnstaged),
                number(ledger.thinned()), number(ledger.released()), number(ledger.alive()),
                number(ledger.unexplained() - deadUnstaged));
    }

    private List<String> notes(PastSheet sheet) {
        List<String> notes = new ArrayList<>();
        if (!sheet.sums().isEmpty()) {
            notes.add(say("years.import.sums", sheet.sums().size()));
        }
        if (!sheet.uncounted().isEmpty()) {
            notes.add(say("years.import.uncounted", String.join(", ", sheet.uncounted())));
        }
        if (sheet.deadUnstaged() > 0) {
            notes.add(say("years.import.unstaged", sheet.deadUnstaged()));
        }
        return notes;
    }

    private static String number(int count) {
        return count < 0 ? "\u2212" + -count : Integer.toString(count);
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
