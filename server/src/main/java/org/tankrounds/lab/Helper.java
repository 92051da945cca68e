package org.tankrounds.lab;

import java.util.List;
import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Deed;

/** Does at a tank what it is told, with the amounts it is told, from one hour on. */
final class Helper {

    private final List<Act> acts;
    private final double holdC;
    private double iceLeftKg;

    /** @param holdC what the ice is to hold and the chiller is set to at most, °C */
    Helper(List<Act> acts, double holdC) {
        this.acts = acts;
        this.holdC = holdC;
        for (Act act : acts) {
            iceLeftKg += act.kind() == Act.Kind.ICE ? act.amount().orElse(0) : 0;
        }
    }

    /** What falls due in an hour of the year. @param since hours since the beginning */
    void pass(TankLife life, int hour, int since) {
        for (Act act : acts) {
            if (since == 0) {
                atOnce(act, life, hour);
            }
            overHours(act, life.water(), since);
        }
    }

    private void atOnce(Act act, TankLife life, int hour) {
        double amount = act.amount().orElse(0);
        switch (act.kind()) {
            case WATER_CHANGE -> life.water().changeTempered(amount / 100);
            case SKIP_FEED -> life.schoolClass().fast(hour + (int) amount);
            case BICARBONATE -> life.water().bakingSoda(amount);
            case THIOSULFATE -> life.water().thiosulfate(amount);
            case MORE_AIR -> life.water().moreAir();
            default -> { }
        }
    }

    private void overHours(Act act, TankWater water, int since) {
        if (act.kind() == Act.Kind.SALT && since < Deed.SALT_HOURS) {
            water.salt(act.amount().orElse(0) / Deed.SALT_HOURS);
        }
        if (act.kind() == Act.Kind.CHECK_CHILLER && since == Deed.MENDED_AFTER_HOURS) {
            water.setChillerGoing(holdC);
        }
        if (act.kind() == Act.Kind.ICE) {
            iceLeftKg -= water.ice(holdC, iceLeftKg);
        }
    }
}
