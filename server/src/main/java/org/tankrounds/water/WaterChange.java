package org.tankrounds.water;

/** What replacing a share of the water does to something dissolved in it. */
public final class WaterChange {

    private WaterChange() {
    }

    /** {@code C = Ctap + (C0 − Ctap)(1 − f)^n} after n changes of share f. */
    public static double after(double level, double tapLevel, double share, int times) {
        double left = 1;
        for (int i = 0; i < times; i++) {
            left *= 1 - share;
        }
        return tapLevel + (level - tapLevel) * left;
    }

    /** The share to replace once to bring a level down to an aim; 0 when it is there already. */
    public static double shareFor(double level, double tapLevel, double aim) {
        if (level <= aim) {
            return 0;
        }
        return tapLevel >= aim ? 1 : (level - aim) / (level - tapLevel);
    }
}
