package org.tankrounds.readings;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.tankrounds.pages.LoggerFilePage.Fact;
import org.tankrounds.readings.LoggerFiles.Preview;
import org.tankrounds.readings.files.LoggedLine;
import org.tankrounds.readings.files.LoggerFile;
import org.tankrounds.readings.files.SetAside;
import org.tankrounds.readings.files.TimeColumns;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;

/** What there is to know of a file before it is kept: how much, from when to when, what is odd. */
final class FileFacts {
    private static final int GAPS_LISTED = 5;
    /** So many times the usual distance between two rows. */
    private static final int GAP_FROM = 3;

    private final Preview preview;
    private final FileWording wording;
    private final LoggerFile read;

    FileFacts(Preview preview, FileWording wording) {
        this.preview = preview;
        this.wording = wording;
        this.read = preview.read();
    }

    List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        facts.add(rows());
        List<LoggedLine> lines = read.lines();
        if (!lines.isEmpty()) {
            facts.add(fact("from", wording.time(lines.get(0).at())));
            facts.add(fact("to", wording.time(lines.get(lines.size() - 1).at())));
        }
        if (lines.size() > 1) {
            facts.add(fact("read", wording.every(usualDistance())));
        }
        read.understanding().taken().keySet().forEach(analyte -> addRange(facts, analyte));
        addCount(facts, "storedBefore", preview.sorted().repeated());
        addCount(facts, "twice", read.repeated());
        addCount(facts, "aside", read.setAside().size());
        addCount(facts, "different", preview.sorted().conflicts().size());
        return facts;
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>(gaps());
        if (read.timeless() > 0) {
            notes.add(wording.say("loggers.note.timeless", read.timeless()));
        }
        if (read.understanding().time().value().filter(time -> time.how() == TimeColumns.How.DAY_ALONE).isPresent()) {
            notes.add(wording.say("loggers.note.dayAlone"));
        }
        if (read.doubledHours() > 0) {
            notes.add(wording.say("loggers.note.doubled", read.doubledHours()));
        }
        long ahead = read.setAside().stream().filter(one -> one.why() == SetAside.Why.AHEAD).count();
        if (ahead > 0) {
            notes.add(wording.say("loggers.note.ahead", ahead));
        }
        read.understanding().taken().keySet().forEach(analyte -> {
            int unusual = unusual(analyte);
            if (unusual > 0) {
                notes.add(wording.unusual(unusual, analyte));
            }
        });
        return notes;
    }

    Fact rows() {
        return fact("rows", Integer.toString(read.rows()));
    }

    private Fact fact(String name, String text) {
        return new Fact(wording.say("loggers.fact." + name), text);
    }

    private void addRange(List<Fact> facts, Analyte analyte) {
        DoubleSummaryStatistics values = read.lines().stream().filter(line -> line.values().containsKey(analyte))
                .mapToDouble(line -> line.values().get(analyte).doubleValue()).summaryStatistics();
        if (values.getCount() > 0) {
            String range = wording.say("loggers.range", Wording.plain(values.getMin()), Wording.plain(values.getMax()));
            String unit = wording.say(Wording.unit(read.understanding().form(analyte)));
            facts.add(new Fact(wording.say(Wording.name(analyte)), unit.isEmpty() ? range : range + " " + unit));
        }
    }

    private void addCount(List<Fact> facts, String name, int count) {
        if (count > 0) {
            facts.add(fact(name, Integer.toString(count)));
        }
    }

    private int unusual(Analyte analyte) {
        UnitForm form = read.understanding().form(analyte);
        return (int) read.lines().stream().filter(line -> line.values().containsKey(analyte))
                .mapToDouble(line -> line.values().get(analyte).doubleValue())
                .map(value -> Units.toCanonical(analyte, form, value, Double.NaN))
                .filter(value -> !analyte.isLikely(value)).count();
    }

    private List<String> gaps() {
        List<String> gaps = new ArrayList<>();
        List<LoggedLine> lines = read.lines();
        Duration longest = lines.size() > 2 ? usualDistance().multipliedBy(GAP_FROM) : Duration.ofDays(10_000);
        for (int i = 1; i < lines.size(); i++) {
            Instant before = lines.get(i - 1).at();
            if (Duration.between(before, lines.get(i).at()).compareTo(longest) > 0) {
                gaps.add(wording.gap(before, lines.get(i).at()));
            }
        }
        int more = gaps.size() - GAPS_LISTED;
        return more <= 0 ? gaps : with(gaps.subList(0, GAPS_LISTED), wording.say("loggers.note.moreGaps", more));
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
