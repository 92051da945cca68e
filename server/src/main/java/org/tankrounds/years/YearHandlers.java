package org.tankrounds.years;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tankrounds.db.Transactions;
import org.tankrounds.web.Asked;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.FormulaGuard;
import org.tankrounds.web.Formats;
import org.tankrounds.web.NotFoundException;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** Seasons beside each other, and counts of past ones put in from a spreadsheet. */
public final class YearHandlers {
    static final String NAME = "name";
    static final String ENDED = "ended_on";
    static final String SHEET = "sheet";
    private static final List<String> NAMES = List.of(NAME, ENDED, SHEET);
    private static final String SUBMISSION = "submission_id";
    /** Hidden: the sheet was looked at as it is. */
    private static final String LOOKED = "looked";
    /** The button that only looks. */
    private static final String AGAIN = "again";
    private static final String SAVED = "saved";
    private static final Set<String> RECEIPTS = Set.of("added", "withdrawn");
    private static final int FIRST_YEAR = 1950;

    private final Transactions transactions;
    private final YearReads reads;
    private final Pages pages;
    private final Clock clock;

    public YearHandlers(Transactions transactions, YearReads reads, Pages pages, Clock clock) {
        this.transactions = transactions;
        this.reads = reads;
        this.pages = pages;
        this.clock = clock;
    }

    public void show(Context ctx) {
        Caller caller = Caller.of(ctx);
        String saved = Optional.ofNullable(ctx.queryParam(SAVED)).filter(RECEIPTS::contains)
                .map(what -> Speech.of(ctx).say("years.saved." + what)).orElse("");
        Formats formats = Speech.of(ctx).formats(caller.zone(), clock.instant());
        List<Year> years = transactions.inChapter(
                caller.chapterId(), tx -> reads.list(tx, caller.chapterId(), clock.instant()));
        pages.show(ctx, "years/years", new YearPages(formats).page(years, saved));
    }

    public void showNew(Context ctx) {
        Map<String, String> blank = new LinkedHashMap<>();
        NAMES.forEach(name -> blank.put(name, ""));
        show(ctx, FormInput.showing(ctx, blank), Optional.empty(), UUID.randomUUID());
    }

    /** What is understood of a sheet is shown before it is kept. */
    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, NAMES);
        UUID submission = Asked.submissionId(ctx.formParam(SUBMISSION));
        String name = form.required(NAME, 60, "years.name.none");
        Optional<LocalDate> ended = endedOn(form);
        form.required(SHEET, Integer.MAX_VALUE, "years.sheet.none");
        PastSheet sheet = PastSheet.read(text(ctx));
        if (!form.text(SHEET).isEmpty() && !sheet.faults().isEmpty()) {
            form.refuse(SHEET, "years.sheet.faults", sheet.faults().size());
        }
        boolean isLookedAt = ImportPages.fingerprint(text(ctx)).equals(ctx.formParam(LOOKED));
        if (!form.ok() || !isLookedAt || ctx.formParam(AGAIN) != null) {
            ctx.status(form.ok() ? HttpStatus.OK : HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form, Optional.of(sheet), submission);
            return;
        }
        boolean isTaken = transactions.inChapter(caller.chapterId(), tx -> {
            boolean taken = reads.list(tx, caller.chapterId(), clock.instant()).stream()
                    .anyMatch(year -> year.name().equalsIgnoreCase(name))
                    && !reads.past().isStored(tx, caller.chapterId(), submission);
            if (!taken) {
                reads.past().add(tx, caller.chapterId(), submission, name, ended.orElseThrow(), sheet,
                        caller.personId().orElseThrow(), clock.instant());
            }
            return taken;
        });
        if (isTaken) {
            form.refuse(NAME, "years.name.taken");
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form, Optional.of(sheet), submission);
            return;
        }
        ctx.redirect("/years?" + SAVED + "=added", HttpStatus.SEE_OTHER);
    }

    /** The sheet as it was put in. */
    public void download(Context ctx) {
        Caller caller = Caller.of(ctx);
        String code = ctx.pathParam("past");
        PastSheet sheet = transactions.inChapter(caller.chapterId(),
                tx -> reads.past().list(tx, caller.chapterId()).stream()
                        .filter(season -> season.code().equals(code)).findFirst()
                        .map(season -> reads.past().sheet(tx, caller.chapterId(), season))
                        .orElseThrow(() -> new NotFoundException("season")));
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(guarded(sheet.header()));
            sheet.lines().forEach(line -> csv.writeRecord(guarded(line.cells())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ctx.contentType("text/csv; charset=utf-8; header=present");
        ctx.header("Content-Disposition", "attachment; filename=\"season-" + code + ".csv\"");
        ctx.result(text.toString());
    }

    /** What a spreadsheet takes for a formula is kept from being one; numbers below none stay numbers. */
    private static List<String> guarded(List<String> cells) {
        return cells.stream().map(cell -> cell.matches("-\\d+([.,]\\d+)?") ? cell : FormulaGuard.guard(cell)).toList();
    }

    public void withdraw(Context ctx) {
        Caller caller = Caller.of(ctx);
        transactions.inChapter(caller.chapterId(), tx -> {
            reads.past().withdraw(tx, caller.chapterId(), ctx.pathParam("past"), caller.personId().orElseThrow(),
                    clock.instant());
            return null;
        });
        ctx.redirect("/years?" + SAVED + "=withdrawn", HttpStatus.SEE_OTHER);
    }

    private Optional<LocalDate> endedOn(FormInput form) {
        if (form.text(ENDED).isEmpty()) {
            form.refuse(ENDED, "years.ended.none");
        }
        Optional<LocalDate> ended = form.day(ENDED, "years.ended.what");
        if (ended.isPresent() && (ended.get().isAfter(clock.instant().atZone(ZoneOffset.UTC).toLocalDate())
                || ended.get().getYear() < FIRST_YEAR)) {
            form.refuse(ENDED, "years.ended.wrong", FIRST_YEAR);
        }
        return ended;
    }

    /** Line ends as browsers send them do not matter. */
    private static String text(Context ctx) {
        return Optional.ofNullable(ctx.formParam(SHEET)).orElse("").replace("\r\n", "\n").replace("\u0000", "")
                .stripTrailing();
    }

    private void show(Context ctx, FormInput form, Optional<PastSheet> sheet, UUID submission) {
        Formats formats = Speech.of(ctx).formats(Caller.of(ctx).zone(), clock.instant());
        pages.show(ctx, "years/import", new ImportPages(formats).page(form, sheet, submission.toString(), text(ctx)));
    }
}
