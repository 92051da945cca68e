package org.tankrounds.rounds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tankrounds.testing.Water.FINE;
import static org.tankrounds.testing.Water.feedingFish;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tankrounds.advice.Act;
import org.tankrounds.advice.Advisor;
import org.tankrounds.advice.Remedy;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Effect;
import org.tankrounds.testing.Water;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.words.Language;

/** One line an act: what it promises, and no more. */
class EffectWordingTest {
    /** A Wednesday. */
    private static final Instant NOW = Instant.parse("2027-03-10T19:00:00Z");
    private static final OptionalDouble NEVER = OptionalDouble.empty();
    private final EffectWording wording = new EffectWording(new Formats(ZoneOffset.UTC, NOW));

    @Test
    void oddsThatFall_areToldBesideThoseWithout() {
        assertThat(alone(Act.Kind.SALT, effect(0.62, 0.18, 100, 20, NEVER, NEVER)))
                .isEqualTo("This alone: 2 in 10 instead of 6 in 10.");
        assertThat(alone(Act.Kind.WATER_CHANGE, effect(0.97, 0.03, 100, 2, NEVER, NEVER)))
                .isEqualTo("This alone: under 1 in 10 instead of over 9 in 10.");
    }

    @Test
    void chiller_promisesOnlyWhatMendingItWould() {
        assertThat(alone(Act.Kind.CHECK_CHILLER, effect(0.8, 0.2, 100, 20, NEVER, NEVER)))
                .isEqualTo("If it is set going again: 2 in 10 instead of 8 in 10.");
    }

    @Test
    void oddsThatReadTheSame_arePromisedToNobody() {
        assertThat(alone(Act.Kind.ICE, effect(0.84, 0.8, 100, 95, OptionalDouble.of(20), OptionalDouble.of(31))))
                .isEqualTo("Only buys time: the limit is met about 11 hours later.");
        assertThat(alone(Act.Kind.SALT, effect(0.98, 0.97, 100, 40, NEVER, NEVER)))
                .isEqualTo("This alone: spares about 6 in 10 of the bad hours; the odds hardly change.");
        assertThat(alone(Act.Kind.SKIP_FEED, effect(0.98, 0.97, 100, 97, NEVER, NEVER)))
                .isEqualTo("Does little by itself within three days.");
        assertThat(alone(Act.Kind.CHECK_CHILLER, effect(0.30, 0.29, 100, 97, NEVER, NEVER))).isEmpty();
    }

    /** What is done in trouble although the courses show a little harm of it, says so. */
    @Test
    void careThatMayHarmALittle_saysSo() {
        assertThat(alone(Act.Kind.SKIP_FEED, effect(0.96, 0.96, 9518, 9857, NEVER, NEVER)))
                .contains("a little harm").contains("lifts the pH").contains("rot");
        assertThat(alone(Act.Kind.MORE_AIR, effect(0.96, 0.96, 9518, 9857, NEVER, NEVER)))
                .contains("a little harm").contains("without oxygen die first");
        assertThat(alone(Act.Kind.MORE_AIR, effect(0.96, 0.96, 9518, 9518, NEVER, NEVER))).isEmpty();
    }

    @Test
    void readingAskedFor_promisesNothing() {
        assertThat(wording.alone(new Remedy(act(Act.Kind.ASK_FOR_READING), Optional.empty()))).isEmpty();
    }

    /** A promise that salt makes good must not be taken for one of the change. */
    @Test
    void effectThatLeansOnOthers_isSaidToComeAfterThem() {
        Effect effect = effect(0.62, 0.1, 100, 10, NEVER, NEVER);
        assertThat(wording.alone(new Remedy(act(Act.Kind.WATER_CHANGE), Optional.of(effect),
                Set.of(Act.Kind.SALT, Act.Kind.SKIP_FEED))))
                .isEqualTo("After the salt and without feed: 1 in 10 instead of 6 in 10.");
        assertThat(wording.alone(new Remedy(act(Act.Kind.BICARBONATE), Optional.of(effect), Set.of(Act.Kind.SALT))))
                .startsWith("After the salt: ");
    }

    @Test
    void allTogether_nameTheirDay() {
        assertThat(wording.together(effect(0.62, 0.1, 100, 10, NEVER, NEVER), NOW))
                .isEqualTo("All of this together: 1 in 10 instead of 6 in 10 by Saturday 19:00.");
    }

    @Test
    void effects_areSaidInSpanish() {
        EffectWording spanish = new EffectWording(
                new Formats(ZoneOffset.UTC, NOW, new Speech(Language.SPANISH, Scale.CELSIUS)));
        Effect effect = effect(0.97, 0.18, 100, 10, NEVER, NEVER);

        assertThat(spanish.alone(new Remedy(act(Act.Kind.WATER_CHANGE), Optional.of(effect), Set.of(Act.Kind.SALT))))
                .isEqualTo("Después de la sal: 2 de cada 10 en vez de más de 9 de cada 10.");
        assertThat(spanish.together(effect, NOW))
                .isEqualTo("Todo esto junto: 2 de cada 10 en vez de más de 9 de cada 10, hasta el sábado a las 19:00.");
    }

    @Test
    void effect_survivesBeingStored() {
        List<Observation> readings = FINE.withNitriteMgPerL(0.35).withPh(6.7).lastRead(0.1);
        for (Remedy remedy : new Advisor().advise(Water.lookAhead(feedingFish(), readings), readings).remedies()) {
            assertThat(ForecastDetail.ActRow.of(remedy).remedy()).isEqualTo(remedy);
        }
    }

    private String alone(Act.Kind kind, Effect effect) {
        return wording.alone(new Remedy(act(kind), Optional.of(effect)));
    }

    private static Act act(Act.Kind kind) {
        return new Act(kind, Optional.of(Driver.NITRITE), OptionalDouble.empty(), "", OptionalDouble.empty(), "", "",
                "");
    }

    private static Effect effect(double chance, double with, double exposure, double exposureWith,
            OptionalDouble hours, OptionalDouble hoursWith) {
        return new Effect(Driver.NITRITE, chance, with, exposure, exposureWith, NEVER, NEVER, hours, hoursWith);
    }
}
