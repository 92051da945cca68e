package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.advice.Advisor;
import org.tankrounds.advice.Remedy;
import org.tankrounds.advice.Trusts;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.LookAhead;

/**
 * Puts the advice to the test on simulated tanks, which know nothing of the engine: at school mornings on
 * which advice is given, the next 72 hours are played with nobody stepping in, with each act alone and with
 * all of them ({@link Morning}). Some mornings begin with a change of untreated water just before, which the
 * class has found out: it is too rare to wait for.
 */
public final class AdviceTrial {

    /** Stands for all acts together. */
    public static final String ALL = "ALL_TOGETHER";
    private static final int CHLORINE_ON_NTH = 3;

    private final Forecaster forecaster;
    private final Advisor advisor;
    private final String world;
    private final List<Followed> all = new ArrayList<>();

    private AdviceTrial(World world, Forecaster forecaster, Advisor advisor) {
        this.world = world.name();
        this.forecaster = forecaster;
        this.advisor = advisor;
    }

    /** All that was followed. The same numbers give the same. */
    public static List<Followed> of(
            World world, long seed, int tanks, int everyNthMorning, Forecaster forecaster, Advisor advisor) {
        SchoolCalendar calendar = new SchoolCalendar(Luck.of(seed, "calendar of " + world.name()));
        List<Integer> mornings = LabSeason.every(everyNthMorning, calendar.mornings());
        AdviceTrial trial = new AdviceTrial(world, forecaster, advisor);
        IntStream.range(0, tanks).forEach(number ->
                trial.play(TankLife.begun(world, seed, number, calendar), mornings, seed * 1_009 + number));
        return trial.all;
    }

    private void play(TankLife life, List<Integer> mornings, long seed) {
        for (int hour = life.arrivedAt(); hour < SchoolCalendar.HOURS; hour++) {
            int which = mornings.indexOf(hour);
            if (which >= 0 && hour > life.arrivedAt()) {
                follow(life, life.notes(), hour, seed, act -> act.kind() != Act.Kind.THIOSULFATE);
            }
            if (which >= 0 && which % CHLORINE_ON_NTH == 0 && hour > life.arrivedAt()) {
                afterUntreatedWater(life, hour, seed);
            }
            life.pass(hour);
        }
    }

    private void afterUntreatedWater(TankLife before, int hour, long seed) {
        Luck luck = Luck.of(seed, "untreated at " + hour);
        TankLife life = before.copy(luck, luck);
        life.water().changeUntreated(luck);
        List<Observation> notes = new ArrayList<>(before.notes());
        notes.add(life.schoolClass().testChlorine(LabSeason.at(hour).minusSeconds(60)));
        follow(life, notes, hour, seed, act -> act.kind() == Act.Kind.THIOSULFATE);
    }

    /** Nobody can follow an amount that is missing because the tank's volume is. */
    private static boolean isTold(Act act) {
        return switch (act.kind()) {
            case SALT, BICARBONATE, ICE, THIOSULFATE -> act.amount().isPresent();
            case LEAVE_WATER -> false;
            default -> true;
        };
    }

    private void follow(TankLife life, List<Observation> known, int hour, long seed, Predicate<Act> which) {
        Instant asOf = LabSeason.at(hour);
        List<Observation> notes = List.copyOf(known);
        LookAhead ahead = forecaster.lookAhead(life.facts(), notes, asOf);
        Advice advice = advisor.advise(ahead, notes);
        List<Remedy> tried = advice.remedies().stream()
                .filter(remedy -> remedy.effect().isPresent() && isTold(remedy.act()) && which.test(remedy.act()))
                .toList();
        if (tried.isEmpty()) {
            return;
        }
        Morning morning = new Morning(life, hour, Limits.DEFAULT.temperatureC(ahead.forecast().stage()) - 1, seed);
        String tank = world + ", " + life.facts().tank() + " of " + seed / 1_009;
        double standsChance = ahead.belief().temperature().stoppedChance();
        for (Remedy remedy : tried) {
            List<Act> act = List.of(remedy.act());
            all.add(new Followed(world, tank, hour, remedy.act().kind().name(),
                    Trusts.Sort.of(remedy.act(), standsChance), remedy.effect().get(),
                    morning.without(), morning.withThoseAlone(act), morning.with(act)));
        }
        List<Act> acts = tried.stream().map(Remedy::act).toList();
        advice.together().filter(effect -> acts.size() > 1).ifPresent(effect -> {
            all.add(new Followed(world, tank, hour, ALL, Trusts.Sort.ALL_TOGETHER, effect,
                    morning.without(), morning.withThoseAlone(acts), morning.with(acts)));
        });
    }
}
