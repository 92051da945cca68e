package org.tankrounds.forecast;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.tankrounds.belief.BeliefFilter;
import org.tankrounds.belief.TankBelief;
import org.tankrounds.lab.LabSeason;
import org.tankrounds.lab.TankSeason;
import org.tankrounds.lab.World;

/** What one tank's forecast costs late in a season, over a chapter of thirty in turn: some have a probe, most not. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class ForecastBenchmark {
    private static final int TANKS = 30;

    private final Forecaster forecaster = new Forecaster();
    private List<TankSeason> tanks;
    private List<TankBelief> beliefs;
    private Instant asOf;
    private int turn;

    @Setup
    public void play() {
        LabSeason season = LabSeason.played(World.NAMED.get(0), 1, TANKS, 1);
        asOf = LabSeason.at(season.mornings().get(season.mornings().size() - 1));
        tanks = season.tanks();
        beliefs = tanks.stream().map(this::believed).toList();
    }

    /** All of it, from the season's readings to the row of the rounds. */
    @Benchmark
    public Forecast forecast() {
        TankSeason tank = tanks.get(next());
        return forecaster.forecast(tank.facts(), tank.observations(), asOf);
    }

    /** From the season's readings to what is held of the tank now. */
    @Benchmark
    public TankBelief belief() {
        return believed(tanks.get(next()));
    }

    /** From that to the courses of the next 72 hours. */
    @Benchmark
    public Object lookAhead() {
        return ForwardModel.run(beliefs.get(next()));
    }

    private TankBelief believed(TankSeason tank) {
        return BeliefFilter.believe(tank.facts(), tank.observations(), asOf);
    }

    private int next() {
        turn = (turn + 1) % TANKS;
        return turn;
    }
}
