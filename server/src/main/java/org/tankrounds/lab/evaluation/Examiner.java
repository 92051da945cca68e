package org.tankrounds.lab.evaluation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;

/**
 * Asks the engine and the plain references about every tank of a season, morning by morning.
 *
 * @param withouts what the engine is made to do without, one at a time
 */
public record Examiner(Forecaster forecaster, List<Source> withouts) {

    static final String ENGINE = "engine";

    /** @param everyNth morning of the season that was played to be asked about */
    public Examination examine(LabSeason season, int everyNth) {
        List<Voice> voices = new ArrayList<>();
        voices.add(voice(season, ENGINE, true, tank -> tank, this::engine));
        for (Reference reference : Reference.values()) {
            voices.add(voice(season, reference.title(), false, tank -> tank, reference));
        }
        Map<String, Set<LabTank>> touched = new LinkedHashMap<>();
        for (Source source : withouts) {
            voices.add(voice(season, source.title(), true, source::without, this::engine));
            touched.put(source.title(), touched(season, source));
        }
        return new Examination(everyNth, questions(season), voices, courses(season), touched);
    }

    private Answer engine(TankSeason tank, Instant asOf) {
        Forecast forecast = forecaster.forecast(tank.facts(), tank.observations(), asOf);
        return new Answer(forecast.chance(), forecast.exposure());
    }

    private static Voice voice(LabSeason season, String name, boolean tellsChance,
            UnaryOperator<TankSeason> told, Oracle oracle) {
        List<TankSeason> tanks = season.tanks().stream().map(told).toList();
        List<Answer> answers = new ArrayList<>();
        forEach(season, (tank, morning) -> answers.add(oracle.ask(tanks.get(tank), LabSeason.at(morning))));
        return new Voice(name, tellsChance, answers);
    }

    private static List<Question> questions(LabSeason season) {
        List<Question> questions = new ArrayList<>();
        forEach(season, (tank, morning) -> {
            TankSeason.Outcome outcome = season.tanks().get(tank).after(morning);
            questions.add(new Question(name(season, tank), morning, outcome.beyond(), outcome.exposure()));
        });
        return questions;
    }

    /** A tank is asked about from the morning after its eggs came. */
    private static void forEach(LabSeason season, Asking asking) {
        for (int morning : season.mornings()) {
            for (int tank = 0; tank < season.tanks().size(); tank++) {
                if (season.tanks().get(tank).arrivedAt() < morning) {
                    asking.of(tank, morning);
                }
            }
        }
    }

    private interface Asking {
        void of(int tank, int morning);
    }

    private static List<TankCourse> courses(LabSeason season) {
        return IntStream.range(0, season.tanks().size())
                .mapToObj(tank -> TankCourse.of(name(season, tank), season.tanks().get(tank))).toList();
    }

    private static Set<LabTank> touched(LabSeason season, Source source) {
        return IntStream.range(0, season.tanks().size())
                .filter(tank -> source.tells(season.tanks().get(tank)))
                .mapToObj(tank -> name(season, tank)).collect(Collectors.toSet());
    }

    private static LabTank name(LabSeason season, int tank) {
        return new LabTank(season.world().name(), season.seed(), tank);
    }
}
