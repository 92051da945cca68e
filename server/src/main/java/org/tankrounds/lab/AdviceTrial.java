package org.tankrounds.lab;

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
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.LookAhead;

/**
 * Puts the advice to the test on simulated tanks, which know nothing of the engine: at school mornings on
 * which advice is given, the next 72 hours are played with nobody stepping in, with each act alone and with
 * all of them ({@link Morning}). Some are played again after a change of untreated water just before, which a
 * card has shown: that is too rare to wait for.
 */
public final class AdviceTrial {

    /** Stands for all acts together. */
    public static final String ALL = "ALL_TOGETHER";
    private static final int CHLORINE_ON_NTH = 3;
    private static final long SEEDS_APART = 1_009;

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
                trial.play(TankLife.begun(world, seed, number, calendar), mornings, seed * SEEDS_APART + number));
        return trial.all;
    }

    private void play(TankLife life, List<Integer> mornings, long seed) {
        for (int hour = life.arrivedAt(); hour < SchoolCalendar.HOURS; hour++) {
            int which = hour > life.arrivedAt() ? mornings.indexOf(hour) : -1;
            if (which >= 0) {
                follow(life, life.notes(), hour, seed, act -> act.kind() != Act.Kind.THIOSULFATE);
            }
            if (which >= 0 && which % CHLORINE_ON_NTH == 0) {
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

    private void follow(TankLife life, List<Observation> known, int hour, long seed, Predicate<Act> which) {
        List<Observation> notes = List.copyOf(known);
        LookAhead ahead = forecaster.lookAhead(life.facts(), notes, LabSeason.at(hour));
        Advice advice = advisor.advise(ahead, notes);
        List<Remedy> tried = advice.remedies().stream().filter(remedy -> remedy.effect().isPresent())
                .filter(remedy -> isTold(remedy.act()) && which.test(remedy.act())).toList();
        if (tried.isEmpty()) {
            return;
        }
        double holdC = Limits.DEFAULT.temperatureC(ahead.forecast().stage()) - 1;
        Case played = new Case(world, life.facts().tank() + " of " + seed / SEEDS_APART, hour,
                new Morning(life, hour, holdC, seed));
        double standsChance = ahead.belief().temperature().stoppedChance();
        tried.forEach(remedy -> all.add(played.followed(remedy.act().kind().name(),
                Trusts.Sort.of(remedy.act(), standsChance), remedy.effect().get(), List.of(remedy.act()))));
        List<Act> acts = tried.stream().map(Remedy::act).toList();
        advice.together().filter(effect -> acts.size() > 1).ifPresent(effect ->
                all.add(played.followed(ALL, Trusts.Sort.ALL_TOGETHER, effect, acts)));
    }

    /** Nobody can follow an amount that is missing because the tank's volume is. */
    private static boolean isTold(Act act) {
        return switch (act.kind()) {
            case SALT, BICARBONATE, ICE, THIOSULFATE -> act.amount().isPresent();
            case LEAVE_WATER -> false;
            default -> true;
        };
    }

    private record Case(String world, String tank, int hour, Morning morning) {

        Followed followed(String what, Trusts.Sort sort, Effect said, List<Act> acts) {
            return new Followed(world, tank, hour, what, sort, said,
                    morning.without(), morning.withThoseAlone(acts), morning.with(acts));
        }
    }
}
