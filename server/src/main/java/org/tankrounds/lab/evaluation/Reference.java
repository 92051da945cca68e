package org.tankrounds.lab.evaluation;

import java.time.Instant;
import java.util.stream.DoubleStream;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;

/** What the engine is held against: orders that need no engine, and one that nobody can have. */
enum Reference implements Oracle {
    /** The largest share of a limit among the newest readings. */
    LATEST("latest reading") {
        @Override
        double score(TankSeason tank, Instant asOf) {
            NewestReadings newest = NewestReadings.of(tank, asOf);
            return DoubleStream.of(newest.temperatureU(), newest.unIonisedU(), newest.nitriteU(),
                    newest.oxygenU(), newest.phU()).max().orElseThrow();
        }
    },
    /** The newest un-ionised ammonia. */
    UN_IONISED("latest NH3") {
        @Override
        double score(TankSeason tank, Instant asOf) {
            return NewestReadings.of(tank, asOf).unIonisedU();
        }
    },
    /** Who has not been heard of for the longest time. */
    SILENT("longest silent") {
        @Override
        double score(TankSeason tank, Instant asOf) {
            return NewestReadings.of(tank, asOf).silentHours();
        }
    },
    /** {@link Points}. */
    POINTS("points") {
        @Override
        double score(TankSeason tank, Instant asOf) {
            return Points.of(NewestReadings.of(tank, asOf));
        }
    },
    /** How near the true water of this hour is to a limit: what cards hide, not what the future does. */
    TRUTH("true water now") {
        @Override
        double score(TankSeason tank, Instant asOf) {
            return tank.nearest()[LabSeason.hourOf(asOf)];
        }
    };

    private final String title;

    Reference(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    /** Only orders: the larger, the more urgent. */
    abstract double score(TankSeason tank, Instant asOf);

    @Override
    public Answer ask(TankSeason tank, Instant asOf) {
        return Answer.ofOrder(score(tank, asOf));
    }
}
