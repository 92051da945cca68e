package org.tankrounds.season;

/**
 * Of the eggs and fish that came to several tanks, those that are there by count or left alive. Each tank is counted by
 * itself before they are added up, so that one tank's surplus does not hide what another has lost; what was moved from
 * one of them to another came once and survives once.
 *
 * @param received of all together
 * @param each of every tank by itself, the ones that it sent on included
 * @param sentOn by tanks that sent on more than came to them
 * @param movedAway of all together, less what was moved to them
 */
public record Survivors(int received, int each, int sentOn, int movedAway) {
    public static final Survivors NONE = new Survivors(0, 0, 0, 0);

    public static Survivors of(Ledger tank) {
        return new Survivors(tank.received(), tank.survived(), Math.max(0, tank.movedAway()), tank.movedAway());
    }

    public Survivors plus(Survivors other) {
        return new Survivors(received + other.received, each + other.each, sentOn + other.sentOn,
                movedAway + other.movedAway);
    }

    /** From elsewhere. */
    public int came() {
        return received + Math.max(0, -movedAway);
    }

    /** From 0 to those that came. */
    public int survived() {
        int amongThem = sentOn - Math.max(0, movedAway);
        return Math.max(0, Math.min(came(), each - amongThem));
    }
}
