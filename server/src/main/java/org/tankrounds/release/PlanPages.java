package org.tankrounds.release;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.ReleasePlanPage;
import org.tankrounds.pages.ReleasePlanPage.Dated;
import org.tankrounds.release.CheckAnswer.Word;
import org.tankrounds.transport.ClosedBox;
import org.tankrounds.transport.Ice;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Pace;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Saying;

/** From a plan and what it is held against to its page. */
final class PlanPages {
    private static final double PERCENT = 100;
    private static final double G_PER_KG = 1000;
    private static final double LEAST_ICE_KG = 0.5;

    private final ReleaseJudge.Facts facts;
    private final Site site;
    private final ReleasePlan plan;
    private final ReleasePlan.Details details;
    private final ZoneId zone;
    private final boolean isPast;
    private final Formats formats;
    private final Speech speech;

    PlanPages(ReleaseJudge.Facts facts, Site site, ZoneId zone, Formats formats) {
        this.facts = facts;
        this.site = site;
        this.plan = facts.plan();
        this.details = plan.details();
        this.zone = zone;
        this.formats = formats;
        this.speech = formats.speech();
        this.isPast = LocalDate.ofInstant(details.startsAt(), zone)
                .isBefore(LocalDate.ofInstant(formats.now(), zone));
    }

    /**
     * @param own tanks that the reader may open
     * @param maySet whether they may change the plan
     */
    ReleasePlanPage page(Set<Integer> own, boolean maySet, String saved) {
        ReleaseJudge judge = new ReleaseJudge(facts, zone, formats);
        GoNoGo verdict = judge.judge();
        boolean stands = plan.droppedAt().isEmpty();
        boolean isOver = !stands || isPast || facts.stillThere().isEmpty();
        return new ReleasePlanPage(title(verdict),
                say("release.plan.lead.line", formats.full(details.startsAt()), site.details().water(),
                        facts.approval().number()), site.address(), site.name(),
                saved.isEmpty() ? "" : say("release.saved." + saved), stands ? stillThere() : "", isOver,
                findings(verdict.against()), open(verdict), !stands,
                maySet && stands ? plan.address() + "/edit" : "", plan.address() + "/checks", checks(judge),
                details.loads().stream().map(load -> row(load, own)).toList(), totals(), dates(), temperingLead(),
                apart(), mixSlowly(), tempering(), bring(), duties(), rules(), details.note().orElse(""));
    }

    private String title(GoNoGo verdict) {
        if (plan.droppedAt().isPresent()) {
            return say("release.plan.title.dropped", site.name());
        }
        int released = facts.days().stream().mapToInt(ReleaseJudge.Done::fish).sum();
        if (released > 0) {
            return say(facts.stillThere().isEmpty() ? "release.plan.title.done" : "release.plan.title.soFar", released,
                    site.name());
        }
        if (isPast) {
            return say("release.plan.title.past", site.name());
        }
        return switch (verdict.verdict()) {
            case GO -> say("release.plan.title.go", site.name());
            case NOT_YET -> say("release.plan.title.notYet", verdict.open().size(), site.name());
            case NO_GO -> say("release.plan.title.noGo", site.name());
        };
    }

    /** While some of it is out and some is not. */
    private String stillThere() {
        if (facts.days().isEmpty() || facts.stillThere().isEmpty()) {
            return "";
        }
        return say(isPast ? "release.plan.notWritten" : "release.plan.stillThere",
                facts.stillThere().stream().map(TankStock::place).collect(Collectors.joining("; ")));
    }

    private List<ReleasePlanPage.Finding> findings(List<GoNoGo.Finding> findings) {
        return findings.stream().map(finding -> new ReleasePlanPage.Finding(
                speech.say(finding.what()), speech.say(finding.whatToDo()))).toList();
    }

    /** Lines that nobody looked at yet stand in the list itself. */
    private List<ReleasePlanPage.Finding> open(GoNoGo verdict) {
        List<ReleasePlanPage.Finding> open = new ArrayList<>(
                findings(verdict.open().stream().filter(finding -> !finding.looked()).toList()));
        long lines = verdict.open().stream().filter(GoNoGo.Finding::looked).count();
        if (lines > 0) {
            open.add(new ReleasePlanPage.Finding(say("release.finding.lines", lines), say("release.todo.lines")));
        }
        return open;
    }

    private List<ReleasePlanPage.Check> checks(ReleaseJudge judge) {
        return Arrays.stream(CheckLine.values()).map(line -> check(line, judge.word(line))).toList();
    }

    private ReleasePlanPage.Check check(CheckLine line, Word now) {
        Optional<CheckAnswer> answer = Optional.ofNullable(facts.answers().get(line));
        boolean stale = answer.filter(one -> one.word() != now).isPresent();
        List<ReleasePlanPage.Choice> choices = Arrays.stream(Word.values()).map(word -> new ReleasePlanPage.Choice(
                line.code() + "-" + word.code(), word.code(), say("release.answer." + word.code()), word == now))
                .toList();
        return new ReleasePlanPage.Check(line.code(), say("release.check." + line.code()), now.code(),
                answer.map(one -> say("release.check.by", one.by(), formats.when(one.at()))).orElse(""),
                stale ? say("release.check.stale") : "", choices);
    }

    private ReleasePlanPage.TankRow row(Load load, Set<Integer> own) {
        TankStock stock = stock(load);
        Optional<ClosedBox> box = load.box();
        return new ReleasePlanPage.TankRow(stock.place(), say("release.plan.fishOf", load.fish(), size(load)),
                say("release.plan.planned", load.fish()),
                say("release.plan.boxesOf", load.boxes(), Formats.number(load.boxL(), 0)),
                box.map(known -> say("release.crowding." + known.crowding().name(),
                        Formats.significant(known.densityGPerL(), 2))).orElse(""),
                box.map(known -> air(known, stock.elevationM())).orElse(""),
                done(load), own.contains(load.tankId()) && takesMore(load)
                        ? plan.address() + "/tanks/" + stock.tank().code() : "");
    }

    /** A second trip is of the same day; whoever forgot to write the first down may do so later. */
    private boolean takesMore(Load load) {
        return plan.droppedAt().isEmpty() && !(isPast && facts.isDone(load.tankId()));
    }

    /** What was written down of it at the water, one line each time. */
    private List<String> done(Load load) {
        return facts.days().stream().filter(done -> done.day().tankId() == load.tankId()).map(this::done).toList();
    }

    private String done(ReleaseJudge.Done done) {
        ReleaseDay day = done.day();
        List<String> parts = new ArrayList<>();
        parts.add(say("release.done", done.fish(), formats.full(day.at())));
        parts.addAll(new DayWording(formats).measured(day));
        day.note().ifPresent(parts::add);
        return String.join("; ", parts);
    }

    private String size(Load load) {
        if (load.biomassG().isEmpty()) {
            return say("release.plan.size.unknown");
        }
        String each = Formats.significant(load.biomassG().getAsDouble() / load.fish(), 2);
        return load.meanLengthMm().isPresent()
                ? say("release.plan.size", Formats.number(load.meanLengthMm().getAsDouble(), 0), each)
                : say("release.plan.size.weight", each);
    }

    private String air(ClosedBox box, double elevationM) {
        OptionalDouble start = details.startOxygenMgPerL(elevationM);
        return start.isEmpty() ? "" : say("release.plan.air.lasts", hours(box.hours(start.getAsDouble())));
    }

    private String hours(double hours) {
        return hours > 24 ? say("release.hours.day") : say("release.hours", Formats.number(hours, 1));
    }

    private String totals() {
        OptionalDouble biomass = details.loads().stream().allMatch(load -> load.biomassG().isPresent())
                ? OptionalDouble.of(details.loads().stream().mapToDouble(load -> load.biomassG().getAsDouble()).sum())
                : OptionalDouble.empty();
        return biomass.isPresent() ? say("release.plan.totals", details.fish(),
                        biomass.getAsDouble() < G_PER_KG ? Formats.significant(biomass.getAsDouble(), 2) + " g"
                                : Formats.significant(biomass.getAsDouble() / G_PER_KG, 2) + " kg", boxes())
                : say("release.plan.totals.unmeasured", details.fish(), boxes());
    }

    private Saying boxes() {
        return Saying.of("release.boxes", details.boxes());
    }

    private List<Dated> dates() {
        Instant starts = details.startsAt();
        Instant leave = starts.minus(Duration.ofMinutes(Math.round(details.roadHours() * 60)));
        List<Dated> dates = new ArrayList<>();
        dates.add(new Dated(formats.full(starts.minus(Duration.ofHours(ReleasePlan.FASTING_FROM_H))),
                say("release.date.fasting",
                        formats.full(starts.minus(Duration.ofHours(ReleasePlan.FASTING_UNTIL_H))))));
        dates.add(new Dated(formats.full(starts.minus(Duration.ofDays(1))), say("release.date.before")));
        dates.add(new Dated(formats.full(leave), say("release.date.leave")));
        dates.add(new Dated(formats.full(starts), say("release.date.water")));
        return dates;
    }

    private List<Tempering.Step> steps(Pace pace) {
        return details.tankC().isEmpty() || details.streamC().isEmpty() ? List.of()
                : Tempering.steps(Stage.FEEDING, details.tankC().getAsDouble(), details.streamC().getAsDouble(), pace);
    }

    private String temperingLead() {
        List<Tempering.Step> slow = steps(Pace.SLOW);
        List<Tempering.Step> quick = steps(Pace.QUICK);
        if (slow.isEmpty()) {
            return say(details.tankC().isEmpty() || details.streamC().isEmpty()
                    ? "release.tempering.unknown" : "release.tempering.barred");
        }
        String from = formats.temperature(details.tankC().getAsDouble(), 1);
        String to = formats.temperature(details.streamC().getAsDouble(), 1);
        return facts.ammonia().stream().anyMatch(AmmoniaRead::asksToMixSlowly)
                ? say("release.tempering.lead.slow", from, to, minutes(slow))
                : say("release.tempering.lead", from, to, minutes(quick), last(slow));
    }

    private String apart() {
        if (steps(Pace.SLOW).isEmpty()) {
            return "";
        }
        double tankC = details.tankC().getAsDouble();
        double streamC = details.streamC().getAsDouble();
        return Tempering.isFarForFry(tankC, streamC) ? say("release.tempering.apart",
                difference(Math.abs(streamC - tankC)), difference(Tempering.FRY_OFTEN_FROM_K)) : "";
    }

    private String difference(double kelvin) {
        return Formats.number(speech.scale().ofDifference(kelvin), 1) + Formats.NO_BREAK + speech.scale().sign();
    }

    /** Of each tank whose water asks for it; where the fish do not go, nothing is mixed. */
    private List<String> mixSlowly() {
        boolean isKnown = details.tankC().isPresent() && details.streamC().isPresent();
        return isKnown && steps(Pace.SLOW).isEmpty() ? List.of()
                : facts.ammonia().stream().filter(AmmoniaRead::asksToMixSlowly)
                        .map(read -> say("release.tempering.ammonia", read.place(),
                                Formats.significant(read.mgNPerL(), 2), formats.when(read.at())))
                        .toList();
    }

    private static Saying minutes(List<Tempering.Step> steps) {
        return Saying.of("release.minutes", last(steps));
    }

    private static int last(List<Tempering.Step> steps) {
        return steps.get(steps.size() - 1).minute();
    }

    /** By the slower pace: whoever hurries may stop earlier at no step. */
    private List<ReleasePlanPage.Step> tempering() {
        return steps(Pace.SLOW).stream().map(step -> new ReleasePlanPage.Step(
                say("release.tempering.minutes", step.fromMinute(), step.minute()),
                step.isGoingOver() ? say("release.tempering.over")
                        : say("release.tempering.share", Formats.number(step.share() * PERCENT, 0)),
                formats.temperature(step.temperatureC(), 1))).toList();
    }

    private List<String> bring() {
        List<String> bring = new ArrayList<>();
        bring.add(say("release.bring.paper", facts.approval().number()));
        bring.add(say("release.bring.boxes", details.boxes()));
        bring.add(say("release.bring.air", details.boxes()));
        details.iceKg().ifPresent(kg -> bring.add(kg < LEAST_ICE_KG ? say("release.bring.ice.little")
                : say("release.bring.ice", Formats.significant(kg, 2))));
        if (details.iceKg().isPresent()) {
            bring.add(oneKgOfIce());
        }
        for (String what : List.of("water", "meters", "nets", "measure", "people", "clean")) {
            bring.add(say("release.bring." + what));
        }
        return bring;
    }

    /** What one bottle does to the smallest box: more than whoever packs them would think. */
    private String oneKgOfIce() {
        double boxL = details.loads().stream().mapToDouble(Load::boxL).min().orElseThrow();
        double tankC = details.tankC().orElseThrow();
        return say("release.bring.ice.oneKg", Formats.significant(boxL, 3), formats.temperature(tankC, 1),
                formats.temperature(Ice.afterC(boxL, tankC, 1, Ice.FREEZER_C), 0));
    }

    private List<Dated> duties() {
        return Arrays.stream(Duty.values()).map(duty -> new Dated(say("release.duty." + duty.code()),
                details.duties().getOrDefault(duty, say("release.duty.nobody")))).toList();
    }

    private String rules() {
        return facts.rules().map(rules -> say("release.plan.rules",
                Saying.of("release.children", details.children()), Saying.of("release.adults", details.adults()),
                rules.adultsFor(details.children())) + " " + (rules.deepestCm() == 0 ? say("release.rules.noWading")
                        : say("release.rules.depth", rules.deepestCm()))
                        + rules.others().map(others -> " " + others).orElse(""))
                .orElseGet(() -> say("release.rules.unset"));
    }

    private TankStock stock(Load load) {
        return facts.stocks().stream().filter(stock -> stock.tank().tankId() == load.tankId()).findFirst()
                .orElseThrow();
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
