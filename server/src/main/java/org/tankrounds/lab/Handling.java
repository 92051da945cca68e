package org.tankrounds.lab;

/**
 * Something that a class does to its water.
 *
 * @param amount feed, times the usual; share changed; alkalinity of a buffer, mg/L; 0 of a repair
 */
record Handling(Kind kind, double amount) {

    enum Kind { FEED, CHANGE, BUFFER, REPAIR }

    static Handling feed(double times) {
        return new Handling(Kind.FEED, times);
    }

    static Handling change(double share) {
        return new Handling(Kind.CHANGE, share);
    }

    static Handling buffer(double raiseMgPerL) {
        return new Handling(Kind.BUFFER, raiseMgPerL);
    }

    static Handling repair() {
        return new Handling(Kind.REPAIR, 0);
    }

    /** @return grams of feed given */
    double on(TankWater water) {
        switch (kind) {
            case FEED -> {
                return water.feed(amount);
            }
            case CHANGE -> water.change(amount);
            case BUFFER -> water.buffer(amount);
            case REPAIR -> water.repair();
        }
        return 0;
    }
}
