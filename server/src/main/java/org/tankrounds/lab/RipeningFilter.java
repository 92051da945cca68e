package org.tankrounds.lab;

import org.tankrounds.tankmodel.Conditions;
import org.tankrounds.tankmodel.Nitrifiers;
import org.tankrounds.tankmodel.TankModel;
import org.tankrounds.tankmodel.TankParameters;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.tankmodel.Wastes;

/**
 * A filter that ripens with time, whatever it is fed, until its surface is full. How fast it then works at the most, or
 * on a trace, is that of {@link Nitrifiers}; between the two it knows no half-way.
 */
final class RipeningFilter {

    /** Of the growth that food in plenty allows: about what is left on the food of a tank, decay off (no source). */
    private static final double RIPENS_SHARE = 0.4;
    private static final double PLENTY_MG_PER_L = 1e6;
    private static final double TRACE_MG_PER_L = 1e-6;

    private final TankModel model;
    private final boolean isCapped;
    private final double firstRoomCodPerL;
    private final double secondRoomCodPerL;

    RipeningFilter(TankModel model, boolean isCapped, double firstRoomCodPerL, double secondRoomCodPerL) {
        this.model = model;
        this.isCapped = isCapped;
        this.firstRoomCodPerL = firstRoomCodPerL;
        this.secondRoomCodPerL = secondRoomCodPerL;
    }

    /** The tank some part of a day later. */
    TankState after(TankState state, Conditions held, double days) {
        TankParameters tank = model.parameters();
        TankState idle = model.after(state.filterSetBack(0), held, days);
        double t = idle.temperatureC();
        double first = state.ammoniaOxidisersCodPerL();
        double second = state.nitriteOxidisersCodPerL();
        double alkalinity = Math.max(0, idle.alkalinityMgPerL());
        double oxidised = turned(tank.ammoniaOxidisers(), first, idle.ammoniaMgPerL(), held, t, days)
                * alkalinity / (tank.halfAlkalinityMgPerL() + alkalinity);
        double nitrite = idle.nitriteMgPerL() + oxidised;
        double nitrated = turned(tank.nitriteOxidisers(), second, nitrite, held, t, days);
        return new TankState(t, idle.ammoniaMgPerL() - oxidised, nitrite - nitrated, idle.nitrateMgPerL() + nitrated,
                idle.alkalinityMgPerL() - Wastes.ALKALINITY_PER_N * oxidised,
                ripened(tank.ammoniaOxidisers(), first, firstRoomCodPerL, t, days),
                ripened(tank.nitriteOxidisers(), second, secondRoomCodPerL, t, days));
    }

    private double turned(Nitrifiers guild, double cod, double mgPerL, Conditions held, double t, double days) {
        if (isCapped) {
            return Math.min(mgPerL, days * guild.oxidisedPerDay(cod, PLENTY_MG_PER_L, held.oxygenMgPerL(), t));
        }
        double perDay = guild.oxidisedPerDay(cod, TRACE_MG_PER_L, held.oxygenMgPerL(), t) / TRACE_MG_PER_L;
        return mgPerL * (1 - StrictMath.exp(-perDay * days));
    }

    private static double ripened(Nitrifiers guild, double cod, double room, double t, double days) {
        double perDay = RIPENS_SHARE * guild.growthPerDay() * guild.warmth(t);
        return cod + cod * perDay * days * Math.max(0, 1 - cod / room);
    }
}
