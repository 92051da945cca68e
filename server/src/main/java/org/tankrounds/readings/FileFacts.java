package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.tankrounds.pages.LoggerFilePage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.readings.LoggerFiles.Preview;
import org.tankrounds.readings.files.LoggedLine;
import org.tankrounds.readings.files.LoggerFile;
import org.tankrounds.readings.files.SetAside;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** What there is to know of a file before it is kept: how much, from when to when, what is odd. */
final class FileFacts {
    private static final int GAPS_LISTED = 5;
    /** So many times the usual distance between two rows. */
    private static final int GAP_FROM = 3;

    private final Tank tank;
    private final Preview preview;
    private final LoggerFile read;

    FileFacts(Tank tank, Preview preview) {
        this.tank = tank;
        this.preview = preview;
        this.read = preview.read();
    }

    List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("Rows", Integer.toString(read.rows())));
        List<LoggedLine> lines = read.lines();
        if (!lines.isEmpty()) {
            facts.add(new Fact("From", FileWording.time(lines.get(0).at(), tank.zone())));
            facts.add(new Fact("To", FileWording.time(lines.get(lines.size() - 1).at(), tank.zone())));
        }
        if (lines.size() > 1) {
            facts.add(new Fact("Read", FileWording.every(usualDistance())));
        }
        read.understanding().taken().keySet().forEach(analyte -> addRange(facts, analyte));
        addCount(facts, "Stored before", preview.sorted().repeated());
        addCount(facts, "There twice", read.repeated());
        addCount(facts, "Set aside", read.setAside().size());
        addCount(facts, "Different", preview.sorted().conflicts().size());
        return facts;
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>(gaps());
        if (read.doubledHours() > 0) {
            notes.add(FileWording.doubled(read.doubledHours()));
        }
        long ahead = read.setAside().stream().filter(one -> one.why() == SetAside.Why.AHEAD).count();
        if (ahead > 0) {
            notes.add(FileWording.ahead((int) ahead));
        }
        read.understanding().taken().keySet().forEach(analyte -> {
            int unusual = unusual(analyte);
            if (unusual > 0) {
                notes.add(FileWording.unusual(unusual, analyte));
            }
        });
        return notes;
    }

    static String value(GivenValue given) {
        return Wording.lower(given.analyte()) + " " + Wording.value(new EnteredValue(given.analyte(), given.value(),
                new UnitForm(given.unit(), given.as().orElse("")), given.step(), given.below()));
    }

    private void addRange(List<Fact> facts, Analyte analyte) {
        DoubleSummaryStatistics values = read.lines().stream().filter(line -> line.values().containsKey(analyte))
                .mapToDouble(line -> line.values().get(analyte).doubleValue()).summaryStatistics();
        if (values.getCount() > 0) {
            String unit = Wording.unit(read.understanding().form(analyte));
            facts.add(new Fact(Wording.name(analyte), Wording.plain(values.getMin()) + " to "
                    + Wording.plain(values.getMax()) + (unit.isEmpty() ? "" : " " + unit)));
        }
    }

    private static void addCount(List<Fact> facts, String name, int count) {
        if (count > 0) {
            facts.add(new Fact(name, Integer.toString(count)));
        }
    }

    private int unusual(Analyte analyte) {
        UnitForm form = read.understanding().form(analyte);
        return (int) read.lines().stream().filter(line -> line.values().containsKey(analyte))
                .mapToDouble(line -> Units.toCanonical(analyte, form, line.values().get(analyte).doubleValue(), Double.NaN))
                .filter(value -> !analyte.isLikely(value)).count();
    }

    private List<String> gaps() {
        List<String> gaps = new ArrayList<>();
        List<LoggedLine> lines = read.lines();
        Duration longest = lines.size() > 2 ? usualDistance().multipliedBy(GAP_FROM) : Duration.ofDays(10_000);
        for (int i = 1; i < lines.size(); i++) {
            Instant before = lines.get(i - 1).at();
            if (Duration.between(before, lines.get(i).at()).compareTo(longest) > 0) {
                gaps.add(FileWording.gap(before, lines.get(i).at(), tank.zone()));
            }
        }
        int more = gaps.size() - GAPS_LISTED;
        return more <= 0 ? gaps : with(gaps.subList(0, GAPS_LISTED), "There are " + more + " more gaps.");
    }

    private static List<String> with(List<String> some, String last) {
        List<String> all = new ArrayList<>(some);
        all.add(last);
        return all;
    }

    private Duration usualDistance() {
        List<LoggedLine> lines = read.lines();
        List<Duration> distances = new ArrayList<>();
        for (int i = 1; i < lines.size(); i++) {
            distances.add(Duration.between(lines.get(i - 1).at(), lines.get(i).at()));
        }
        distances.sort(Duration::compareTo);
        return distances.get(distances.size() / 2);
    }
}
