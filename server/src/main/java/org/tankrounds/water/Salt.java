package org.tankrounds.water;

/** Plain salt against nitrite: chloride competes with it at the gill (Tomasso 1986, Aquat. Toxicol. 8:129–137). */
public final class Salt {

    /** mg NaCl per mg chloride: (22.98977 + 35.453) / 35.453. */
    public static final double NACL_PER_CL = 1.648458;

    private Salt() {
    }

    /** Grams of NaCl that bring a volume from one chloride to another; 0 when it is there already. */
    public static double grams(double chlorideMgPerL, double targetMgPerL, double volumeL) {
        return Math.max(0, targetMgPerL - chlorideMgPerL) * NACL_PER_CL * volumeL / 1000;
    }
}
