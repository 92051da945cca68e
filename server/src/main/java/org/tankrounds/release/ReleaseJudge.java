package org.tankrounds.release;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.fish.Stage;
import org.tankrounds.release.CheckAnswer.Word;
import org.tankrounds.release.GoNoGo.Finding;
import org.tankrounds.transport.ClosedBox;
import org.tankrounds.transport.ClosedBox.Crowding;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Bar;
import org.tankrounds.web.Formats;
import org.tankrounds.words.Saying;

/** Holds a plan against its approval, the chapter's rules, the counts, the water and what was looked at. */
final class ReleaseJudge {

    /**
     * What a plan is held against.
     *
     * @param used of the approval by all but this plan
     * @param stocks of the plan's tanks
     * @param ammonia as the plan's tanks had it last
     * @param days what was written down of it at the water, and still holds
     */
    record Facts(ReleasePlan plan, Approval approval, Approval.Used used, Optional<Rules> rules,
            List<TankStock> stocks, List<AmmoniaRead> ammonia, Map<CheckLine, CheckAnswer> answers, List<Done> days) {
        /** Whether fish of a tank are out by this plan already. */
        boolean isDone(int tankId) {
            return days.stream().anyMatch(done -> done.day().tankId() == tankId);
        }

        /** Tanks of the plan of which nothing is written down yet. */
        List<TankStock> stillThere() {
            return stocks.stream().filter(stock -> !isDone(stock.tank().tankId())).toList();
        }
    }

    /** @param fish how many, as the count has it */
    record Done(ReleaseDay day, int fish) {}

    private final Facts facts;
    private final ReleasePlan.Details details;
    private final ZoneId zone;
    private final Formats formats;
    private final List<Finding> findings = new ArrayList<>();

    ReleaseJudge(Facts facts, ZoneId zone, Formats formats) {
        this.facts = facts;
        this.details = facts.plan().details();
        this.zone = zone;
        this.formats = formats;
    }

    GoNoGo judge() {
        holdAgainstApproval();
        holdAgainstCounts();
        holdAgainstRules();
        holdAgainstWater();
        details.loads().forEach(this::holdAgainstBoxes);
        for (CheckLine line : CheckLine.values()) {
            findings.add(new Finding(word(line), Saying.of("release.check." + line.code()),
                    Saying.of("release.check.todo." + line.code()), true));
        }
        return new GoNoGo(findings);
    }

    LocalDate day() {
        return details.startsAt().atZone(zone).toLocalDate();
    }

    /** As it counts today. */
    Word word(CheckLine line) {
        return Optional.ofNullable(facts.answers().get(line)).map(answer -> answer.wordOn(line, day(), zone))
                .orElse(Word.UNKNOWN);
    }

    private void holdAgainstApproval() {
        Saying askAgency = Saying.of("release.todo.agency", facts.approval().details().agency());
        facts.approval().refusal(day(), formats::longDate).ifPresent(why -> add(Word.NO, why, askAgency));
        int ahead = details.loads().stream().filter(load -> !facts.isDone(load.tankId())).mapToInt(Load::fish).sum();
        facts.approval().refusal(ahead, facts.used()).ifPresent(why -> add(Word.NO, why, askAgency));
    }

    private void holdAgainstCounts() {
        for (TankStock stock : facts.stocks()) {
            load(stock).filter(load -> !facts.isDone(load.tankId())).flatMap(load -> stock.refusal(load.fish()))
                    .ifPresent(why -> add(Word.NO, Saying.of("release.finding.ofTank", stock.place(), why),
                            Saying.of("release.todo.count")));
        }
    }

    private void holdAgainstRules() {
        if (facts.rules().isEmpty()) {
            add(Word.UNKNOWN, Saying.of("release.finding.rules"), Saying.of("release.todo.rules"));
        }
        facts.rules().filter(rules -> details.adults() < rules.adultsFor(details.children())).ifPresent(rules ->
                add(Word.NO, Saying.of("release.finding.adults", details.children(),
                        rules.adultsFor(details.children()), Saying.of("release.finding.planned", details.adults())),
                        Saying.of("release.todo.adults")));
        Set<Duty> open = EnumSet.allOf(Duty.class);
        open.removeAll(details.duties().keySet());
        open.forEach(duty -> add(Word.UNKNOWN,
                Saying.of("release.finding.duty", Saying.of("release.duty." + duty.code())),
                Saying.of("release.todo.duty")));
    }

    private void holdAgainstWater() {
        if (details.tankC().isEmpty() || details.streamC().isEmpty()) {
            add(Word.UNKNOWN, Saying.of("release.finding.temperatures"), Saying.of("release.todo.temperatures"));
            return;
        }
        double streamC = details.streamC().getAsDouble();
        Optional<Bar> bar = Tempering.bar(Stage.FEEDING, details.tankC().getAsDouble(), streamC);
        bar.ifPresent(found -> add(Word.NO, Saying.of(found == Bar.TOO_COLD ? "release.finding.tooCold"
                : "release.finding.tooWarm", formats.temperature(streamC, 1)), Saying.of("release.todo.otherDay")));
    }

    private void holdAgainstBoxes(Load load) {
        String place = place(load);
        Optional<ClosedBox> box = load.box();
        if (box.isEmpty()) {
            add(Word.UNKNOWN, Saying.of("release.finding.length", place), Saying.of("release.todo.length"));
            return;
        }
        if (box.get().crowding() == Crowding.TOO_TIGHT) {
            double litres = ClosedBox.waterForL(box.get().biomassG(), ClosedBox.ROOMY_G_PER_L);
            add(Word.NO, Saying.of("release.finding.tight", place, Formats.number(box.get().densityGPerL(), 0)),
                    Saying.of("release.todo.tight", (int) Math.ceil(litres / load.boxL()),
                            Formats.number(load.boxL(), 0)));
        }
        holdAgainstOxygen(load, box.get());
        if (details.roadHours() > ClosedBox.LONGEST_H) {
            add(Word.NO, Saying.of("release.finding.road", Formats.significant(details.roadHours(), 2)),
                    Saying.of("release.todo.road"));
        }
    }

    private void holdAgainstOxygen(Load load, ClosedBox box) {
        double elevationM = stock(load).map(TankStock::elevationM).orElse(0.0);
        details.startOxygenMgPerL(elevationM).ifPresent(start -> {
            if (!details.hasAir() && box.hours(start) < details.roadHours()) {
                add(Word.NO, Saying.of("release.finding.oxygen", place(load), Formats.number(box.hours(start), 1)),
                        Saying.of("release.todo.oxygen"));
            }
        });
    }

    private Optional<Load> load(TankStock stock) {
        return details.loads().stream().filter(load -> load.tankId() == stock.tank().tankId()).findFirst();
    }

    private Optional<TankStock> stock(Load load) {
        return facts.stocks().stream().filter(stock -> stock.tank().tankId() == load.tankId()).findFirst();
    }

    private String place(Load load) {
        return stock(load).map(TankStock::place).orElse("");
    }

    /** What is wrong for each tank alike is said once. */
    private void add(Word word, Saying what, Saying whatToDo) {
        Finding finding = new Finding(word, what, whatToDo, false);
        if (!findings.contains(finding)) {
            findings.add(finding);
        }
    }
}
