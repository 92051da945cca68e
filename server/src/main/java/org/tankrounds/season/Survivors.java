package org.tankrounds.season;

/**
 * Of the eggs and fish that came to several tanks, those that are there by count or left alive; never more than came
 * and did not die. Each tank is counted by itself before they are added up, so that one tank's surplus does not hide
 * what another has lost; what was moved from one of them to another came once and survives once.
 *
 * @param received of all together
 * @param apart survivors of the tanks that nothing was moved to or from: what was written down wrongly elsewhere
 *         takes none of them away
 * @param linked of the others
 */
public record Survivors(int received, int apart, Linked linked) {
    public static final Survivors NONE = new Survivors(0, 0, Linked.NONE);

    /**
     * Tanks that something was moved to or from.
     *
     * @param received of all together
     * @param dead of all together, in each no more than came to it
     * @param each of every tank by itself, the ones that it sent on included
     * @param sentOn by tanks that sent on more than came to them
     * @param movedAway of all together, less what was moved to them
     */
    public record Linked(int received, int dead, int each, int sentOn, int movedAway) {
        static final Linked NONE = new Linked(0, 0, 0, 0, 0);

        private Linked plus(Linked other) {
            return new Linked(received + other.received, dead + other.dead, each + other.each, sentOn + other.sentOn,
                    movedAway + other.movedAway);
        }

        private int survived() {
            int amongThem = sentOn - Math.max(0, movedAway);
            int most = received + Math.max(0, -movedAway) - dead;
            return Math.max(0, Math.min(most, each - amongThem));
        }
    }

    public static Survivors of(Ledger tank) {
        if (tank.movedIn() == 0 && tank.movedOut() == 0) {
            return new Survivors(tank.received(), tank.survived(), Linked.NONE);
        }
        int dead = Math.min(tank.dead(), tank.received() + tank.movedIn());
        return new Survivors(tank.received(), 0, new Linked(tank.received(), dead, tank.survived(),
                Math.max(0, tank.movedAway()), tank.movedAway()));
    }

    public Survivors plus(Survivors other) {
        return new Survivors(received + other.received, apart + other.apart, linked.plus(other.linked));
    }

    /** From elsewhere. */
    public int came() {
        return received + Math.max(0, -linked.movedAway);
    }

    /** From 0 to those that came and did not die. */
    public int survived() {
        return apart + linked.survived();
    }
}
