package org.tankrounds.lab;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Forecaster;

/** Asks for a ranking every morning of a season and keeps the answers. */
public final class Evaluation {

    /** What answers for a tank at a moment: a chance and an exposure. */
    interface Oracle {
        double[] ask(TankSeason tank, Instant asOf);
    }

    private Evaluation() {
    }

    /** The engine's answers. */
    public static List<Answer> ofEngine(LabSeason season, Forecaster forecaster) {
        return of(season, (tank, asOf) -> {
            Forecast forecast = forecaster.forecast(tank.facts(), tank.observations(), asOf);
            return new double[] {forecast.chance(), forecast.exposure()};
        });
    }

    /** The plain reference's: the newest readings over their limits. Its chance is no chance, only an order. */
    public static List<Answer> ofLatestReadings(LabSeason season) {
        return of(season, (tank, asOf) -> {
            double score = LatestReadings.score(tank, asOf);
            return new double[] {Math.min(1, score / 2), score};
        });
    }

    /** What somebody who knew the water of this hour would say. */
    public static List<Answer> ofTruthNow(LabSeason season) {
        return of(season, (tank, asOf) -> {
            int hour = SchoolCalendar.hourOf(asOf);
            double excess = tank.excess()[hour] * tank.alive()[hour];
            return new double[] {excess > 0 ? 0.9 : 0.1, excess};
        });
    }

    static List<Answer> of(LabSeason season, Oracle oracle) {
        List<Answer> answers = new ArrayList<>();
        for (int morning : season.mornings()) {
            for (int i = 0; i < season.tanks().size(); i++) {
                TankSeason tank = season.tanks().get(i);
                if (tank.arrivedAt() < morning) {
                    double[] said = oracle.ask(tank, LabSeason.at(morning));
                    TankSeason.Outcome outcome = tank.after(morning);
                    answers.add(new Answer(morning, i, said[0], said[1], outcome.beyond(), outcome.exposure()));
                }
            }
        }
        return answers;
    }
}
