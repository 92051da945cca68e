package org.tankrounds.tankmodel;

/**
 * What acts on a tank from outside and is held during a step.
 *
 * @param nitrogenGPerDay total ammonia nitrogen that fish and leftovers give off, g N/d; see {@link Wastes}
 * @param oxygenMgPerL dissolved oxygen that the aeration holds, mg/L
 * @param roomC temperature of the room, °C
 * @param chillerCondition 1 sound, 0 stopped; between for a fading one
 */
public record Conditions(
        double nitrogenGPerDay, double oxygenMgPerL, double roomC, double chillerCondition) {

    public Conditions {
        if (!(nitrogenGPerDay >= 0) || !(oxygenMgPerL >= 0)) {
            throw new IllegalArgumentException("nitrogenGPerDay and oxygenMgPerL must be 0 or more, were "
                    + nitrogenGPerDay + " and " + oxygenMgPerL);
        }
        if (!(chillerCondition >= 0 && chillerCondition <= 1)) {
            throw new IllegalArgumentException("chillerCondition must be 0 to 1, was " + chillerCondition);
        }
    }
}
