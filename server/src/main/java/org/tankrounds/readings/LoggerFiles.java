package org.tankrounds.readings;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.jobs.AfterChange;
import org.tankrounds.jobs.DirtyTanks;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.DeviceSorting.Look;
import org.tankrounds.readings.DeviceSorting.Sorted;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.LoggerFileRepository.Sent;
import org.tankrounds.readings.StoreDeviceReadings.Target;
import org.tankrounds.readings.StoreReading.Sender;
import org.tankrounds.readings.files.Choices;
import org.tankrounds.readings.files.LoggedLine;
import org.tankrounds.readings.files.LoggerFile;
import org.tankrounds.readings.files.LoggerFile.Here;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.web.Caller;
import org.tankrounds.web.MultipartForm.SentFile;
import org.tankrounds.web.NotFoundException;

/** A logger's file from its sending to its being taken back; a tank's files belong to whoever may see the tank. */
public final class LoggerFiles {

    /** A file with the tank that it is for. */
    record Found(Tank tank, KeptFile file) {}

    /** A file before it is kept. */
    record Preview(Tank tank, KeptFile file, LoggerFile read, Sorted sorted) {}

    private final Transactions transactions;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final ReadingRepository readings;
    private final StoreDeviceReadings store;
    private final AfterChange afterChange;
    private final Clock clock;
    private final LoggerFileRepository files = new LoggerFileRepository();

    public LoggerFiles(Transactions transactions, TankRepository tanks, KitRepository kits, ReadingRepository readings,
            DirtyTanks dirtyTanks, AfterChange afterChange, Clock clock) {
        this.transactions = transactions;
        this.tanks = tanks;
        this.kits = kits;
        this.readings = readings;
        this.store = new StoreDeviceReadings(readings, dirtyTanks);
        this.afterChange = afterChange;
        this.clock = clock;
    }

    List<KeptFile> list(Caller caller, Tank tank) {
        return transactions.inChapter(caller.chapterId(), tx -> files.list(tx, caller.chapterId(), tank.tankId()));
    }

    Tank tank(Caller caller, String tankCode) {
        return transactions.inChapter(caller.chapterId(), tx -> tanks.get(tx, caller, tankCode));
    }

    /**
     * @return the code under which the file waits to be kept
     * @throws org.tankrounds.readings.files.UnreadableFileException where there is nothing to look at in it
     */
    String send(Caller caller, Tank tank, SentFile sent) {
        Instant now = now();
        LoggerFile read = LoggerFile.read(sent.content(), Choices.none(), new Here(tank.zone(), now));
        String header = read.header();
        return transactions.inChapter(caller.chapterId(), tx -> {
            files.forgetWaiting(tx, caller.chapterId(), now);
            Choices asBefore = header.isEmpty() ? Choices.none()
                    : files.findLastChoices(tx, caller.chapterId(), tank.tankId(), header).orElse(Choices.none());
            return files.add(tx, caller.chapterId(), tank, new Sent(sent.name(), Packed.pack(sent.content()), header,
                    asBefore.without(Choices.CONFLICTS), caller.personId().orElseThrow()), now);
        });
    }

    Found find(Caller caller, String tankCode, String fileCode) {
        return transactions.inChapter(caller.chapterId(), tx -> {
            Tank tank = tanks.get(tx, caller, tankCode);
            return new Found(tank, files.find(tx, caller.chapterId(), tank.tankId(), fileCode)
                    .orElseThrow(() -> new NotFoundException("file")));
        });
    }

    Preview preview(Caller caller, Found found) {
        return transactions.inChapter(caller.chapterId(), tx -> preview(tx, caller.chapterId(), found));
    }

    /** What somebody said of a file that waits. */
    void choose(Caller caller, Found found, Choices choices) {
        transactions.inChapter(caller.chapterId(), tx -> {
            files.choose(tx, caller.chapterId(), found.file(), choices);
            return null;
        });
    }

    /**
     * Stores what is new in a file; what is kept already stays as it is.
     *
     * @return empty where there is still something to be asked
     */
    Optional<KeptFile> keep(Caller caller, String tankCode, String fileCode) {
        Optional<KeptFile> kept = transactions.inChapter(caller.chapterId(), tx -> {
            Found found = alone(tx, caller, tankCode, fileCode);
            return found.file().isKept() ? Optional.of(found.file()) : keep(tx, caller, found);
        });
        kept.ifPresent(file -> afterChange.changed(caller.chapterId()));
        return kept;
    }

    /** A file that is not kept yet is forgotten; of one that is, the readings hold no more. Twice is once. */
    Found takeBack(Caller caller, String tankCode, String fileCode) {
        Found taken = transactions.inChapter(caller.chapterId(), tx -> {
            Found found = alone(tx, caller, tankCode, fileCode);
            if (!found.file().isKept()) {
                files.remove(tx, caller.chapterId(), found.file());
            } else if (found.file().canBeTakenBack(now())) {
                takeBack(tx, caller, found);
            }
            return found;
        });
        afterChange.changed(caller.chapterId());
        return taken;
    }

    int countCorrected(Caller caller, KeptFile file) {
        return transactions.inChapter(caller.chapterId(), tx -> files.countCorrected(tx, caller.chapterId(), file));
    }

    private Found alone(DSLContext tx, Caller caller, String tankCode, String fileCode) {
        Tank tank = tanks.get(tx, caller, tankCode);
        StoreDeviceReadings.alone(tx, tank.tankId());
        return new Found(tank, files.findAlone(tx, caller.chapterId(), tank.tankId(), fileCode)
                .orElseThrow(() -> new NotFoundException("file")));
    }

    private Preview preview(DSLContext tx, int chapterId, Found found) {
        byte[] content = Packed.unpack(files.packed(tx, chapterId, found.file())
                .orElseThrow(() -> new NotFoundException("file")));
        Choices choices = found.file().choices();
        LoggerFile read = LoggerFile.read(content, choices, new Here(found.tank().zone(), now()));
        List<Look> looks = read.lines().stream().map(line -> look(read, line)).toList();
        return new Preview(found.tank(), found.file(), read, DeviceSorting.sort(
                tx, chapterId, found.tank().tankId(), looks, choices.takesFromFile()));
    }

    private Optional<KeptFile> keep(DSLContext tx, Caller caller, Found found) {
        Preview preview = preview(tx, caller.chapterId(), found);
        if (!preview.read().understanding().questions().isEmpty()) {
            return Optional.empty();
        }
        KeptFile file = found.file();
        Target target = target(tx, caller, found);
        files.replace(tx, caller.chapterId(), file, preview.sorted().replaced(), target.now());
        int stored = store.store(tx, target, preview.sorted().fresh()).size();
        files.kept(tx, caller.chapterId(), file, stored, target.now());
        return files.find(tx, caller.chapterId(), file.tankId(), file.code());
    }

    private void takeBack(DSLContext tx, Caller caller, Found found) {
        Target target = target(tx, caller, found);
        files.withdraw(tx, caller.chapterId(), found.file(), target.now());
        files.takenBack(tx, caller.chapterId(), found.file(), target.now());
        List<Long> again = files.bringBack(tx, caller.chapterId(), found.file());
        store.bringBack(tx, target, readings.listNumbered(tx, caller.chapterId(), again));
        store.mark(tx, target);
    }

    private Target target(DSLContext tx, Caller caller, Found found) {
        Sender sender = Sender.of(caller).withFile(OptionalInt.of(found.file().fileId()));
        return new Target(caller.chapterId(), found.tank(), kits.get(tx, caller.chapterId(), found.tank().kitId()),
                Reading.CHANNEL_FILE, sender, now());
    }

    private static Look look(LoggerFile file, LoggedLine line) {
        List<GivenValue> values = line.values().entrySet().stream().map(entry -> {
            Analyte analyte = entry.getKey();
            UnitForm form = file.understanding().form(analyte);
            return new GivenValue("", analyte, entry.getValue(), form.unit(), Optional.empty(), Optional.empty(),
                    false, false);
        }).toList();
        return new Look(line.at(), values, true);
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
