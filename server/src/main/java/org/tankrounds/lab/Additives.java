package org.tankrounds.lab;

import org.tankrounds.water.Chlorine;
import org.tankrounds.water.Salt;

/** What people bring into the water of a tank, knowing it or not: chlorine from the tap, and salt. */
final class Additives {

    private static final double CHLORINE_DAYS = 20 / 24.0;

    private final double volumeL;
    private double chlorineMgPerL;
    /** Above what the source brings. */
    private double chlorideMgPerL;

    Additives(double volumeL) {
        this.volumeL = volumeL;
    }

    Additives(Additives other) {
        this(other.volumeL);
        chlorineMgPerL = other.chlorineMgPerL;
        chlorideMgPerL = other.chlorideMgPerL;
    }

    double chlorineMgPerL() {
        return chlorineMgPerL;
    }

    double chlorideMgPerL() {
        return chlorideMgPerL;
    }

    /** A share of the water is replaced by such as has neither. */
    void dilute(double share) {
        chlorineMgPerL *= 1 - share;
        chlorideMgPerL *= 1 - share;
    }

    void chlorine(double mgPerL) {
        chlorineMgPerL += mgPerL;
    }

    void salt(double grams) {
        chlorideMgPerL += 1000 * grams / Salt.NACL_PER_CL / volumeL;
    }

    void thiosulfate(double grams) {
        chlorineMgPerL = Math.max(0, chlorineMgPerL - 1000 * grams / Chlorine.THIOSULFATE_PER_CL2 / volumeL);
    }

    /** Chlorine leaves with the air. */
    void pass(double days) {
        chlorineMgPerL *= 1 - days / CHLORINE_DAYS;
    }
}
