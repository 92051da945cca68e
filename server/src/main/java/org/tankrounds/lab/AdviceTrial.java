package org.tankrounds.lab;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advice;
import org.tankrounds.advice.Advisor;
import org.tankrounds.advice.Remedy;
import org.tankrounds.advice.Trusts;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.LookAhead;

/**
 * Puts the advice to the test on simulated tanks, which know nothing of the engine: at school mornings on
 * which advice is given, the next 72 hours are played with nobody stepping in, with each act alone and with
 * all of them ({@link Morning}). Each is played again with something {@link Staged} just before that is too rare
 * to wait for. Where the advice is to leave the water, it is the usual large change that is not followed.
 */
public final class AdviceTrial {

    /** Stands for all acts together. */
    public static final String ALL = "ALL_TOGETHER";
    private static final double USUAL_CHANGE = 0.5;
    private static final long SEEDS_APART = 1_009;
    private static final Set<Driver> TAKE_BREATH = EnumSet.of(Driver.NITRITE, Driver.TEMPERATURE, Driver.DEATHS);

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
                follow(new Scene(life, life.notes(), hour, seed, ""), act -> act.kind() != Act.Kind.THIOSULFATE);
                Staged staged = Staged.next(which + (int) seed);
                follow(after(staged, life, hour, seed), staged::tries);
            }
            life.pass(hour);
        }
    }

    private static Scene after(Staged staged, TankLife before, int hour, long seed) {
        Luck luck = Luck.of(seed, staged.words() + " at " + hour);
        TankLife life = before.copy(luck, luck);
        staged.on(life.water(), luck);
        List<Observation> notes = new ArrayList<>(before.notes());
        notes.addAll(staged.read(life.schoolClass(), LabSeason.at(hour).minusSeconds(60)));
        return new Scene(life, notes, hour, seed, ", " + staged.words());
    }

    /** A moment at which advice is asked for. @param staged what was, in words */
    private record Scene(TankLife life, List<Observation> notes, int hour, long seed, String staged) {

        Scene {
            notes = List.copyOf(notes);
        }

        LookAhead ahead(Forecaster forecaster) {
            return forecaster.lookAhead(life.facts(), notes, LabSeason.at(hour));
        }
    }

    private void follow(Scene scene, Predicate<Act> which) {
        LookAhead ahead = scene.ahead(forecaster);
        Advice advice = advisor.advise(ahead, scene.notes);
        List<Act> acts = advice.remedies().stream().filter(remedy -> remedy.effect().isPresent())
                .map(Remedy::act).filter(act -> isTold(act) && which.test(act)).toList();
        Optional<Act> left = advice.acts().stream()
                .filter(act -> act.kind() == Act.Kind.LEAVE_WATER && which.test(act)).findFirst();
        if (acts.isEmpty() && left.isEmpty()) {
            return;
        }
        double holdC = Limits.DEFAULT.temperatureC(ahead.forecast().stage()) - 1;
        Case played = new Case(world, scene, ahead, new Morning(scene.life, scene.hour, holdC, scene.seed));
        advice.remedies().stream().filter(remedy -> acts.contains(remedy.act()))
                .forEach(remedy -> all.add(played.alone(withWhatItLeansOn(remedy, advice.acts()),
                        remedy.effect().orElseThrow())));
        advice.together().filter(effect -> acts.size() > 1 && scene.staged.isEmpty())
                .ifPresent(effect -> all.add(played.together(acts, effect)));
        left.ifPresent(act -> all.add(played.left(act)));
    }

    /** What is told to be done only after salt, or without feed, is. */
    private static List<Act> withWhatItLeansOn(Remedy remedy, List<Act> advised) {
        return Stream.concat(Stream.of(remedy.act()), advised.stream()
                .filter(other -> remedy.leansOn().contains(other.kind()) && isTold(other))).toList();
    }

    /** Nobody can follow an amount that is missing because the tank's volume is. */
    private static boolean isTold(Act act) {
        return switch (act.kind()) {
            case SALT, BICARBONATE, ICE, THIOSULFATE ->
                act.amount().isPresent() && !act.unit().equals(Act.G_PER_100_L);
            default -> true;
        };
    }

    private record Case(String world, Scene scene, LookAhead ahead, Morning morning) {

        /** @param acts one, and what is told to come before it */
        Followed alone(List<Act> acts, Effect said) {
            Act act = acts.get(0);
            double standsChance = ahead.belief().temperature().stoppedChance();
            return followed(act.kind() + meant(act), Optional.of(Trusts.Sort.of(act, standsChance)), said,
                    acts);
        }

        /**
         * Most chillers that are looked at run; then nothing is gained, and what the others gain is not to be seen
         * among them. And air for blood that nitrite or warmth robs of it shows at no limit.
         */
        private String meant(Act act) {
            return switch (act.kind()) {
                case CHECK_CHILLER -> scene.life.water().isChillerSound() ? ", found sound" : ", found broken";
                case MORE_AIR -> act.driver().filter(TAKE_BREATH::contains).isPresent() ? ", for the blood" : "";
                default -> "";
            };
        }

        Followed together(List<Act> acts, Effect said) {
            return followed(ALL, Optional.of(Trusts.Sort.ALL_TOGETHER), said, acts);
        }

        private Followed followed(String what, Optional<Trusts.Sort> sort, Effect said, List<Act> acts) {
            return new Followed(world, tank(), scene.hour, what + scene.staged, acts, sort, said,
                    morning.without(), morning.withThoseAlone(acts), morning.with(acts));
        }

        /** Without: the water is changed all the same. With: it is not. */
        Followed left(Act act) {
            Effect changed = ahead.effect(Deed.waterChange(USUAL_CHANGE), act.driver().orElseThrow());
            Came left = morning.without();
            return new Followed(world, tank(), scene.hour, act.kind().name() + scene.staged, List.of(act),
                    Optional.empty(), changed.undone(), morning.afterChange(USUAL_CHANGE), left, left);
        }

        private String tank() {
            return scene.life.facts().tank() + " of " + scene.seed / SEEDS_APART;
        }
    }
}
