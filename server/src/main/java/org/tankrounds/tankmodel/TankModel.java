package org.tankrounds.tankmodel;

import java.util.Objects;
import org.tankrounds.water.HeatBalance;

/**
 * A tank's water and filter carried forward in time.
 *
 * <pre>
 * dTAN/dt = 1000·P/V − rA        dNO2/dt = rA − rN        dNO3/dt = rN        dAlk/dt = −7.14·rA
 * dT/dt   = (UA·(Troom − T) + Qpump − Qchiller) / (M·c)
 * </pre>
 *
 * with rA and rN from {@link Nitrifiers}; rA also times {@code Alk/(KAlk + Alk)} where the parameters ask for it.
 * Bacteria take up no nitrogen of note, oxygen is what the aeration holds, surfaces of the filter do not run out.
 *
 * <p>Fourth-order Runge–Kutta with steps of at most {@value #LONGEST_STEP_DAYS} d (14 minutes): halving it moves the
 * peaks of a start-up by less than 1e-8 mg/L. No clock and no randomness: the same input gives the same output.
 * What the seed of a filter is, nobody knows in the field; take from it the order of things, never a date.
 */
public final class TankModel {

    /** Longest step, d. */
    public static final double LONGEST_STEP_DAYS = 0.01;

    private static final double SECONDS_PER_DAY = 86_400;
    /** So that 10 days are 1000 steps and not 1001, whatever the last binary digit says. */
    private static final double ROUNDING = 1e-9;

    private final TankParameters parameters;

    public TankModel(TankParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters, "parameters");
    }

    public TankParameters parameters() {
        return parameters;
    }

    /**
     * The tank some days later, with the conditions held all the while.
     *
     * @param days 0 or more
     */
    public TankState after(TankState start, Conditions held, double days) {
        if (!(days >= 0) || Double.isInfinite(days)) {
            throw new IllegalArgumentException("days must be 0 or more, was " + days);
        }
        int steps = (int) Math.ceil(days / LONGEST_STEP_DAYS - ROUNDING);
        TankState state = start;
        for (int i = 0; i < steps; i++) {
            state = step(state, held, days / steps);
        }
        return state;
    }

    /** pH of a state of this tank. */
    public double ph(TankState state) {
        return state.ph(parameters.carbonDioxideMgPerL());
    }

    private TankState step(TankState at, Conditions held, double days) {
        TankState first = perDay(at, held);
        TankState second = perDay(at.plus(first, days / 2), held);
        TankState third = perDay(at.plus(second, days / 2), held);
        TankState fourth = perDay(at.plus(third, days), held);
        return at.plus(first, days / 6).plus(second, days / 3).plus(third, days / 3).plus(fourth, days / 6);
    }

    /** The rates of change: a state whose every number is per day. */
    TankState perDay(TankState at, Conditions held) {
        double temperatureC = at.temperatureC();
        Nitrifiers first = parameters.ammoniaOxidisers();
        Nitrifiers second = parameters.nitriteOxidisers();
        double supplied = 1000 * held.nitrogenGPerDay() / parameters.volumeL();
        double toNitrite = alkalinityLeft(at.alkalinityMgPerL()) * first.oxidisedPerDay(
                at.ammoniaOxidisersCodPerL(), at.ammoniaMgPerL(), held.oxygenMgPerL(), temperatureC);
        double toNitrate = second.oxidisedPerDay(
                at.nitriteOxidisersCodPerL(), at.nitriteMgPerL(), held.oxygenMgPerL(), temperatureC);
        return new TankState(
                kelvinPerDay(temperatureC, held),
                supplied - toNitrite,
                toNitrite - toNitrate,
                toNitrate,
                -Wastes.ALKALINITY_PER_N * toNitrite,
                first.gainedPerDay(at.ammoniaOxidisersCodPerL(), toNitrite, temperatureC),
                second.gainedPerDay(at.nitriteOxidisersCodPerL(), toNitrate, temperatureC));
    }

    private double alkalinityLeft(double alkalinityMgPerL) {
        double half = parameters.halfAlkalinityMgPerL();
        double alkalinity = Math.max(0, alkalinityMgPerL);
        return half == 0 ? 1 : alkalinity / (half + alkalinity);
    }

    private double kelvinPerDay(double temperatureC, Conditions held) {
        double watts = parameters.lossWPerK() * (held.roomC() - temperatureC) + parameters.pumpW()
                - parameters.chiller().takesOutW(temperatureC, held.chillerCondition());
        return watts * SECONDS_PER_DAY / (parameters.volumeL() * HeatBalance.WATER_J_PER_KG_K);
    }
}
