package org.tankrounds.lab;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advisor;
import org.tankrounds.forecast.Forecaster;

/**
 * The advice followed on simulated tanks of the six named worlds and some drawn at random, whose water knows
 * nothing of the engine. Small: some thousand mornings; rare acts are judged only where there are enough.
 */
class AdviceTrialTest {
    private static final long SEED = 2031;
    private static final int TANKS = 6;
    private static final int EVERY_NTH_MORNING = 14;
    private static final int FIRST_DRAWN = 12_001;
    private static final int DRAWN = 10;
    private static final int ENOUGH = 25;
    /** A world's own mornings; of fewer no span can be told. */
    private static final int A_FEW = 10;
    private static final long SODA_SEED = 77_204;
    private static final int SODA_TANKS = 11;
    private static final int EVERY_WEEK = 7;
    /** Of all mornings on which something was done, so many brought a tank beyond a limit by it at most. */
    private static final double MOST_BROUGHT_BEYOND = 0.002;
    /** The same for more than a few hours and more than a tenth of the limit. */
    private static final double MOST_CLEARLY_BEYOND = 0.0005;
    /** For each tank that an act brings beyond a limit, it keeps so many within all. */
    private static final int KEPT_FOR_ONE = 10;
    /** Air lifts the pH, and with it the harm of much ammonia; all the same fish have to breathe. */
    private static final int LESS_FAR_FOR_ONE = 2;
    private static final String FOUND_SOUND = "CHECK_CHILLER, found sound";
    private static final String FOR_THE_BLOOD = "MORE_AIR, for the blood";

    private static List<Followed> followed;
    private static final Map<String, EffectRow> BY_ACT = new TreeMap<>();

    @BeforeAll
    static void followTheAdvice() {
        Forecaster forecaster = new Forecaster();
        Stream<World> drawn = IntStream.range(FIRST_DRAWN, FIRST_DRAWN + DRAWN).mapToObj(World::drawn);
        followed = Stream.concat(World.NAMED.stream(), drawn).toList().parallelStream()
                .flatMap(world -> AdviceTrial.of(
                        world, SEED, TANKS, EVERY_NTH_MORNING, forecaster, new Advisor()).stream()).toList();
        EffectRow.of(followed).forEach(row -> BY_ACT.put(row.act(), row));
    }

    @Test
    void followingTheAdvice_keepsManyMoreTanksUnderTheirLimits() {
        EffectRow all = BY_ACT.get(AdviceTrial.ALL);
        assertThat(all.cases()).isGreaterThan(150);
        assertThat(all.beyondWith()).as("%s", all).isLessThan(0.65 * all.beyondWithout());
        assertThat(all.exposureWith()).as("%s", all).isLessThan(0.5 * all.exposureWithout());
    }

    @Test
    void everyActByItself_keepsTanksUnderTheirLimitsMoreOften() {
        assertThat(acts()).hasSizeGreaterThan(6).allSatisfy(row -> {
            assertThat(row.beyondWith()).as("%s", row).isLessThan(row.beyondWithout());
            assertThat(row.exposureWith()).as("%s", row).isLessThan(row.exposureWithout());
        });
    }

    /** Of itself: the class does what it would have done without. */
    @Test
    void everyActByItself_keepsManyTanksWithinForOneThatItBringsBeyond() {
        assertThat(acts()).allSatisfy(row -> {
            assertThat(row.keptWithin()).as("%s", row).isPositive()
                    .isGreaterThanOrEqualTo(KEPT_FOR_ONE * row.broughtBeyond());
            assertThat(row.broughtLessFar()).as("%s", row.ofItself())
                    .isGreaterThanOrEqualTo(LESS_FAR_FOR_ONE * row.broughtFurther());
        });
    }

    @Test
    void hardlyAnyTank_goesBeyondALimitByWhatWasDone() {
        List<Followed> done = followed.stream().filter(Followed::isDone).toList();
        List<Followed> beyond = done.stream().filter(Followed::isNewlyBeyondOfItself).toList();
        assertThat(beyond).as("%s", beyond.stream().map(Followed::told).toList())
                .hasSizeLessThanOrEqualTo((int) (MOST_BROUGHT_BEYOND * done.size()));
        assertThat(beyond).filteredOn(one -> !one.isSlightlyBeyondOfItself())
                .hasSizeLessThanOrEqualTo((int) (MOST_CLEARLY_BEYOND * done.size()));
    }

    /** All that the same tanks might have shown instead, but for the luckiest. */
    @Test
    void everyActByItself_raisesNoExposure() {
        assertThat(acts()).allSatisfy(row ->
                assertThat(row.exposureRaised()[1]).as("%s", row).isNegative());
    }

    /** In no world is there more exposure than chance among its tanks explains. */
    @Test
    void noAct_harmsInAnyWorld() {
        Map<String, List<Followed>> byWorld = followed.stream().filter(Followed::isDone)
                .collect(Collectors.groupingBy(Followed::world));
        assertThat(byWorld).hasSizeGreaterThan(World.NAMED.size());
        byWorld.forEach((world, ofWorld) -> assertThat(EffectRow.of(ofWorld))
                .filteredOn(row -> row.cases() >= A_FEW).allSatisfy(row ->
                        assertThat(row.exposureRaised()[0]).as("%s: %s", world, row).isLessThanOrEqualTo(0)));
    }

    /** A look at a chiller that runs does no harm; one at a chiller that does not takes most of the trouble away. */
    @Test
    void chiller_lookedAt_isWorthItWhereItFailed_andCostsNothingElsewhere() {
        EffectRow sound = BY_ACT.get(FOUND_SOUND);
        EffectRow broken = BY_ACT.get("CHECK_CHILLER, found broken");
        assertThat(sound.exposureWith()).as("%s", sound).isLessThanOrEqualTo(sound.exposureWithout());
        assertThat(sound.broughtBeyond()).as("%s", sound).isZero();
        assertThat(broken.cases()).isGreaterThan(A_FEW);
        assertThat(broken.exposureWith()).as("%s", broken).isLessThan(0.5 * broken.exposureWithout());
    }

    /** Its good shows at no limit; so it is enough that it does no harm there. */
    @Test
    void airForTheBlood_bringsNoTankBeyondALimit() {
        EffectRow air = BY_ACT.get(FOR_THE_BLOOD);
        assertThat(air.broughtBeyond()).as("%s", air).isZero();
        assertThat(air.exposureRaised()[0]).as("%s", air).isLessThanOrEqualTo(0);
    }

    /**
     * Half of the water changed lifts the pH and wakes the filter: more fish-hours than where it is left sour, and more
     * tanks beyond the limit of ammonia or nitrite, though within that of pH.
     */
    @Test
    void sourWaterWithMuchAmmonia_isBetterLeftThanHalfChanged() {
        EffectRow left = new EffectRow("left", followed.stream().filter(one -> !one.isDone()).toList());
        assertThat(left.cases()).isGreaterThan(ENOUGH);
        assertThat(left.exposureRaised()[1]).as("%s", left).isNegative();
        assertThat(left.poisonedWith()).as("%s", left.ofItself()).isLessThan(left.poisonedWithout());
    }

    /** What is rarely met by itself is staged often enough to judge. */
    @Test
    void everyStagedTrouble_isAdvisedOn() {
        assertThat(Staged.values()).allSatisfy(staged ->
                assertThat(BY_ACT.keySet()).anyMatch(act -> act.endsWith(", " + staged.words())));
    }

    /** Alkalinity given back at a stroke wakes nitrifiers, and nitrite with them. */
    @Test
    void bakingSodaInSoftWater_bringsNoNitriteBeyondItsLimit() {
        EffectRow soda = EffectRow.of(AdviceTrial.of(World.SOFT_WATER, SODA_SEED, SODA_TANKS, EVERY_WEEK,
                new Forecaster(), new Advisor())).stream()
                .filter(row -> row.act().equals(Act.Kind.BICARBONATE.name())).findFirst().orElseThrow();
        assertThat(soda.cases()).isGreaterThan(2);
        assertThat(soda.beyondWith()).as("%s", soda).isLessThanOrEqualTo(soda.beyondWithout());
        assertThat(soda.exposureWith()).as("%s", soda).isLessThanOrEqualTo(soda.exposureWithout());
        assertThat(soda.newlyBeyond()).as("%s", soda).isZero();
    }

    /** Untreated water was changed in, a card shows it, and what was dosed is by the card. */
    @Test
    void thiosulfate_takesTheChlorineOut() {
        EffectRow dosed = BY_ACT.get("THIOSULFATE, untreated water");
        assertThat(dosed.cases()).isGreaterThan(100);
        assertThat(dosed.beyondWithout()).as("%s", dosed).isEqualTo(1);
        assertThat(dosed.beyondWith()).as("%s", dosed).isLessThan(0.5);
        assertThat(dosed.exposureWith()).as("%s", dosed).isLessThan(0.2 * dosed.exposureWithout());
    }

    @Test
    void chancesSaid_promiseNoMoreThanComes() {
        assertThat(acts()).allSatisfy(row -> {
            double said = row.saidWithout() - row.saidWith();
            double came = row.beyondWithout() - row.beyondWith();
            assertThat(said).as("%s", row).isLessThan(came + 0.05);
        });
        EffectRow all = BY_ACT.get(AdviceTrial.ALL);
        assertThat(all.saidWithout()).as("%s", all).isCloseTo(all.beyondWithout(), within(0.1));
    }

    /** What is done to the water, of each kind all that was met or staged, where that is enough to judge it by. */
    private static List<EffectRow> acts() {
        Map<String, List<Followed>> byKind = followed.stream().filter(Followed::isDone)
                .filter(one -> !one.what().equals(FOUND_SOUND) && !one.what().equals(FOR_THE_BLOOD))
                .collect(Collectors.groupingBy(one -> one.what().split(",")[0], TreeMap::new, Collectors.toList()));
        return byKind.entrySet().stream().map(kind -> new EffectRow(kind.getKey(), kind.getValue()))
                .filter(row -> row.cases() >= ENOUGH).toList();
    }

    /** With and without differ by the act alone: one that the water feels nothing of changes nothing. */
    @Test
    void sameHours_passTheSameWhateverIsDone_butForWhatItDoes() {
        SchoolCalendar calendar = new SchoolCalendar(Luck.of(SEED, "calendar"));
        TankLife life = TankLife.begun(World.SOFT_WATER, SEED, 1, calendar);
        for (int hour = life.arrivedAt(); hour < 4_000; hour++) {
            life.pass(hour);
        }
        Morning morning = new Morning(life, 4_000, 12, SEED);
        List<Act> look = List.of(new Advisor().advise(new Forecaster().lookAhead(
                life.facts(), List.of(), LabSeason.at(4_000)), List.of()).acts().get(0));
        assertThat(look.get(0).kind()).isIn(Act.Kind.ASK_FOR_READING, Act.Kind.LOOK_AT_FISH);
        assertThat(morning.with(look).exposure()).isEqualTo(morning.without().exposure());
        assertThat(morning.withThoseAlone(look).exposure()).isEqualTo(morning.without().exposure());
    }

    @Test
    void trial_ofTheSameSeed_isTheSame() {
        assertThat(rows()).isNotEmpty().isEqualTo(rows());
    }

    private static String rows() {
        return EffectRow.of(AdviceTrial.of(
                World.SOFT_WATER, 3, 2, 30, new Forecaster(), new Advisor())).toString();
    }
}
