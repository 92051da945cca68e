package org.tankrounds.lab.evaluation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One tank on made-up mornings; every number is worked by hand. */
class AlarmsTest {
    private static final LabTank TANK = new LabTank("usual", 1, 0);

    private final List<Question> questions = new ArrayList<>();
    private final List<Answer> answers = new ArrayList<>();

    @Test
    void episodeWithAnAlarmInTheThreeDaysBefore_isForeseen() {
        morning(100, 0.9, false);
        morning(124, 0.2, true);
        morning(148, 0.8, true);
        morning(172, 0.8, true);
        Alarms alarms = alarms(1, 0.5, 180);
        assertThat(alarms.episodes()).isEqualTo(1);
        assertThat(alarms.foreseen()).isEqualTo(1);
        assertThat(alarms.medianLeadHours()).isEqualTo(180 - 148);
    }

    @Test
    void episodeWithoutAlarm_isNotForeseen() {
        morning(148, 0.4, true);
        Alarms alarms = alarms(1, 0.5, 180);
        assertThat(alarms.foreseen()).isZero();
        assertThat(alarms.medianLeadHours()).isNaN();
    }

    @Test
    void episodeThatNobodyWasAskedAboutBefore_doesNotCount() {
        morning(100, 0.9, false);
        morning(180, 0.9, true);
        assertThat(alarms(1, 0.5, 180).episodes()).isZero();
    }

    /** Two alarms in half a month, one of them false; asked every second morning, each stands for two. */
    @Test
    void falseAlarms_areThoseAfterWhichNothingCame() {
        morning(100, 0.9, false);
        morning(148, 0.5, true);
        morning(196, 0.49, false);
        Alarms daily = alarms(1, 0.5);
        assertThat(daily.perTankMonth()).isCloseTo(4, within(1e-12));
        assertThat(daily.falsePerTankMonth()).isCloseTo(2, within(1e-12));
        assertThat(alarms(2, 0.5).falsePerTankMonth()).isCloseTo(4, within(1e-12));
    }

    @Test
    void threshold_isWhereAsManyAlarmsAreRaised() {
        double[] said = {5, 1, 4, 4, 4, 2};
        assertThat(Alarms.threshold(said, 1)).isEqualTo(5);
        assertThat(Alarms.threshold(said, 5)).isEqualTo(2);
        assertThat(Alarms.threshold(said, 2)).isEqualTo(5);
        assertThat(Alarms.threshold(said, 3)).isEqualTo(4);
        assertThat(Alarms.threshold(said, 0)).isInfinite();
        assertThat(Alarms.threshold(said, 6)).isEqualTo(1);
    }

    private void morning(int hour, double chance, boolean beyond) {
        questions.add(new Question(TANK, hour, beyond, beyond ? 1 : 0));
        answers.add(new Answer(chance, chance));
    }

    private Alarms alarms(int everyNth, double threshold, Integer... episodes) {
        Voice engine = new Voice("engine", true, answers);
        Examination examination = new Examination(everyNth, questions, List.of(engine),
                List.of(new TankCourse(TANK, 0.5, List.of(episodes))), Collections.emptyMap());
        return Alarms.of(examination, examination.answered(engine), threshold);
    }
}
