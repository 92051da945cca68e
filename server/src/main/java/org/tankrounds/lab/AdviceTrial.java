package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.advice.Advisor;
import org.tankrounds.advice.Remedy;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.LookAhead;

/**
 * Puts the advice to the test on simulated tanks, which know nothing of the engine: at school mornings on
 * which advice is given, the next 72 hours are played with nobody stepping in, with each act alone and with
 * all of them, the weather, the breakages and the class's luck of every hour being the same.
 */
public final class AdviceTrial {

    /** Stands for all acts together. */
    public static final String ALL = "ALL_TOGETHER";
    private static final int HORIZON_HOURS = 72;
    private static final int BEYOND_HOURS = 2;

    private final Forecaster forecaster;
    private final Advisor advisor = new Advisor();
    private final Map<String, EffectRow> rows = new TreeMap<>();

    /** What came of 72 hours. */
    private record Came(boolean beyond, double exposure) {
    }

    private AdviceTrial(Forecaster forecaster) {
        this.forecaster = forecaster;
    }

    /** By act. The same numbers give the same rows. */
    public static List<EffectRow> of(
            World world, long seed, int tanks, int everyNthMorning, Forecaster forecaster) {
        SchoolCalendar calendar = new SchoolCalendar(Luck.of(seed, "calendar of " + world.name()));
        List<Integer> mornings = LabSeason.every(everyNthMorning, calendar.mornings());
        AdviceTrial trial = new AdviceTrial(forecaster);
        IntStream.range(0, tanks).forEach(number ->
                trial.play(TankLife.begun(world, seed, number, calendar), mornings, seed * 1_009 + number));
        return List.copyOf(trial.rows.values());
    }

    /** A table of what was said and what came, world by world and of all. */
    public static List<String> report(
            List<World> worlds, List<Long> seeds, int tanks, int everyNthMorning, Forecaster forecaster) {
        List<String> lines = new ArrayList<>();
        Map<String, EffectRow> ofAll = new TreeMap<>();
        for (World world : worlds) {
            Map<String, EffectRow> ofWorld = new TreeMap<>();
            seeds.forEach(seed -> of(world, seed, tanks, everyNthMorning, forecaster)
                    .forEach(row -> ofWorld.merge(row.act(), row, EffectRow::plus)));
            lines.addAll(table(world.name(), ofWorld.values()));
            ofWorld.values().forEach(row -> ofAll.merge(row.act(), row, EffectRow::plus));
        }
        lines.addAll(table("all worlds", ofAll.values()));
        return lines;
    }

    private static List<String> table(String title, Collection<EffectRow> rows) {
        List<String> lines = new ArrayList<>(List.of(title, EffectRow.heading()));
        rows.forEach(row -> lines.add(row.toString()));
        lines.add("");
        return lines;
    }

    private void play(TankLife life, List<Integer> mornings, long seed) {
        for (int hour = life.arrivedAt(); hour < SchoolCalendar.HOURS; hour++) {
            if (mornings.contains(hour) && hour > life.arrivedAt()) {
                morning(life, hour, seed);
            }
            life.pass(hour);
        }
    }

    private void morning(TankLife life, int hour, long seed) {
        Instant asOf = LabSeason.at(hour);
        List<Observation> notes = List.copyOf(life.notes());
        LookAhead ahead = forecaster.lookAhead(life.facts(), notes, asOf);
        Advice advice = advisor.advise(ahead, notes);
        List<Remedy> tried = advice.remedies().stream().filter(remedy -> remedy.effect().isPresent()
                && remedy.act().kind() != Act.Kind.LEAVE_WATER).toList();
        if (tried.isEmpty()) {
            return;
        }
        double holdC = Limits.DEFAULT.temperatureC(ahead.forecast().stage()) - 1;
        Came without = after(life, hour, List.of(), holdC, seed);
        for (Remedy remedy : tried) {
            add(remedy.act().kind().name(), remedy.effect().get(), without,
                    after(life, hour, List.of(remedy.act()), holdC, seed));
        }
        if (advice.together().isPresent()) {
            add(ALL, advice.together().get(), without,
                    after(life, hour, tried.stream().map(Remedy::act).toList(), holdC, seed));
        }
    }

    private void add(String act, Effect said, Came without, Came with) {
        rows.computeIfAbsent(act, EffectRow::new)
                .add(said, without.beyond, with.beyond, without.exposure, with.exposure);
    }

    private static Came after(TankLife life, int from, List<Act> acts, double holdC, long seed) {
        Luck watersLuck = new Luck(0);
        Luck classesLuck = new Luck(0);
        TankLife copy = life.copy(watersLuck, classesLuck);
        Helper helper = new Helper(acts, holdC);
        int beyond = 0;
        double exposure = 0;
        for (int hour = from; hour < from + HORIZON_HOURS; hour++) {
            double excess = copy.water().excess(Limits.DEFAULT);
            beyond += excess > 0 ? 1 : 0;
            exposure += excess * copy.water().alive();
            watersLuck.beginAnew(seed, 2 * hour);
            classesLuck.beginAnew(seed, 2 * hour + 1);
            helper.pass(copy, hour, hour - from);
            copy.pass(hour);
        }
        return new Came(beyond >= BEYOND_HOURS, exposure);
    }
}
