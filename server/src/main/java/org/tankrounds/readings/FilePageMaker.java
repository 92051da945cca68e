package org.tankrounds.readings;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.LogPage.Step;
import org.tankrounds.pages.LoggerFilePage;
import org.tankrounds.pages.LoggerFilePage.Aside;
import org.tankrounds.pages.LoggerFilePage.Conflict;
import org.tankrounds.pages.LoggerFilePage.Fact;
import org.tankrounds.pages.LoggerFilePage.FirstRows;
import org.tankrounds.pages.LoggerFilesPage;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.LoggerFiles.Preview;
import org.tankrounds.readings.files.Choices;
import org.tankrounds.readings.files.LoggerFile;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Secrets;

/** From a logger's file to its page, before and after it is kept. */
final class FilePageMaker {
    private static final int FIRST_ROWS = 5;
    private static final int LISTED = 50;

    private final Tank tank;
    private final Formats formats;
    private final FileWording wording;
    private final String list;

    FilePageMaker(Tank tank, Formats formats) {
        this.tank = tank;
        this.formats = formats;
        this.wording = new FileWording(formats);
        this.list = "/tanks/" + tank.code() + "/files";
    }

    /** What a page's boxes say, so that nothing else is kept than what it showed. */
    static String fingerprint(Map<String, String> said) {
        String text = new TreeMap<>(said).toString();
        return HexFormat.of().formatHex(Secrets.sha256(text.getBytes(StandardCharsets.UTF_8)), 0, 8);
    }

    LoggerFilesPage list(List<KeptFile> files, String error) {
        FormField box = FormField.text("file", wording.say("loggers.file"), "")
                .withHint(wording.say("loggers.limits")).withError(error);
        String title = formats.speech().titled(box.wrong(), wording.say("loggers.title"));
        return new LoggerFilesPage(title, place(), "/tanks/" + tank.code(), list, box, files.stream()
                .map(file -> new LoggerFilesPage.Row(file.name(), list + "/" + file.code(),
                        formats.full(file.receivedAt()), wording.state(file))).toList());
    }

    private static String shown(FileFields fields, Preview preview) {
        Map<String, String> said = new HashMap<>(fields.said());
        if (!preview.sorted().conflicts().isEmpty() && preview.file().choices().takesFromFile()) {
            said.put(Choices.CONFLICTS, Choices.FROM_FILE);
        }
        return fingerprint(said);
    }

    /** @param alert key of the sentence why nothing was kept just now; may be empty */
    LoggerFilePage waiting(Preview preview, String alert) {
        LoggerFile read = preview.read();
        FileFields fields = new FileFields(read.understanding(), tank.zone(), wording);
        List<FormField> questions = fields.questions();
        int fresh = preview.sorted().fresh().size();
        String name = preview.file().name();
        boolean clear = questions.isEmpty();
        FileFacts facts = new FileFacts(preview, wording);
        String heading = clear ? wording.fresh(fresh, read, name)
                : wording.say("loggers.questions", questions.size(), name);
        return new LoggerFilePage(
                formats.speech().titled(!alert.isEmpty(), heading), heading, place(), "/tanks/" + tank.code(), list,
                list + "/" + preview.file().code(), wording.say(clear ? "loggers.look" : "loggers.nothingKept"), true,
                alert.isEmpty() ? "" : wording.say(alert),
                shown(fields, preview), questions, fields.understood(),
                clear ? facts.facts() : List.of(facts.rows()),
                wording.keep(fresh), list + "/" + preview.file().code() + "/taken-back",
                clear ? facts.notes() : List.of(),
                new FirstRows(read.names(), shortened(read.firstRows(FIRST_ROWS))),
                aside(read), wording.more(read.setAside().size() - LISTED),
                conflicts(preview), wording.more(preview.sorted().conflicts().size() - LISTED),
                conflictChoices(preview.file().choices()), false);
    }

    LoggerFilePage kept(KeptFile file, int corrected) {
        boolean takenBack = file.takenBackAt().isPresent();
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("sent", file.receivedAt()));
        facts.add(fact("kept", file.keptAt().orElseThrow()));
        file.takenBackAt().ifPresent(at -> facts.add(fact("takenBack", at)));
        String lead = takenBack ? wording.say("loggers.sendAgain")
                : corrected > 0 ? wording.say("loggers.corrected", corrected) : wording.say("loggers.inLog");
        String heading = takenBack ? wording.say("loggers.takenBack", file.name())
                : wording.say("loggers.kept", file.stored(), file.name());
        return new LoggerFilePage(heading, heading, place(),
                "/tanks/" + tank.code(), list, list + "/" + file.code(), lead, false, "", "", List.of(), List.of(),
                facts, "", list + "/" + file.code() + "/taken-back", List.of(), new FirstRows(List.of(), List.of()),
                List.of(), "", List.of(), "", List.of(), file.canBeTakenBack(formats.now()));
    }

    private Fact fact(String name, Instant at) {
        return new Fact(wording.say("loggers.fact." + name), formats.full(at));
    }

    private String place() {
        return tank.school() + ", " + tank.classroom();
    }

    private static List<List<String>> shortened(List<List<String>> rows) {
        return rows.stream().map(row -> row.stream().map(FileWording::cell).toList()).toList();
    }

    private List<Aside> aside(LoggerFile read) {
        return read.setAside().stream().limit(LISTED).map(one -> new Aside(Integer.toString(one.line()),
                FileWording.cell(one.cell()), wording.why(one.why()))).toList();
    }

    private List<Conflict> conflicts(Preview preview) {
        return preview.sorted().conflicts().stream().limit(LISTED).map(one -> new Conflict(
                wording.time(one.at()), wording.value(one.stored()), wording.value(entered(one.given())))).toList();
    }

    private static EnteredValue entered(GivenValue given) {
        return new EnteredValue(given.analyte(), given.value(), new UnitForm(given.unit(), given.as().orElse("")),
                given.step(), given.below());
    }

    private List<Step> conflictChoices(Choices choices) {
        return List.of(
                new Step("conflicts-stored", "", wording.say("loggers.conflicts.stays"), !choices.takesFromFile()),
                new Step("conflicts-file", Choices.FROM_FILE, wording.say("loggers.conflicts.fileIsRight"),
                        choices.takesFromFile()));
    }
}
