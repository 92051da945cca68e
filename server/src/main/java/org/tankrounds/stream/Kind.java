package org.tankrounds.stream;

import static org.tankrounds.stream.Sensitivity.SENSITIVE;
import static org.tankrounds.stream.Sensitivity.SOMEWHAT_SENSITIVE;
import static org.tankrounds.stream.Sensitivity.TOLERANT;

/**
 * What a volunteer tells apart without a lens; coarser than families.
 *
 * <p>Source: US EPA 1997, Volunteer Stream Monitoring, EPA 841-B-97-003; which kind is how sensitive is from memory.
 */
public enum Kind {
    STONEFLY(SENSITIVE),
    MAYFLY(SENSITIVE),
    CADDISFLY(SENSITIVE),
    WATER_PENNY(SENSITIVE),
    RIFFLE_BEETLE(SENSITIVE),
    DOBSONFLY(SENSITIVE),
    GILLED_SNAIL(SENSITIVE),
    NET_SPINNER(SOMEWHAT_SENSITIVE),
    ALDERFLY(SOMEWHAT_SENSITIVE),
    DRAGONFLY(SOMEWHAT_SENSITIVE),
    DAMSELFLY(SOMEWHAT_SENSITIVE),
    CRANE_FLY(SOMEWHAT_SENSITIVE),
    SNIPE_FLY(SOMEWHAT_SENSITIVE),
    SCUD(SOMEWHAT_SENSITIVE),
    SOWBUG(SOMEWHAT_SENSITIVE),
    CRAYFISH(SOMEWHAT_SENSITIVE),
    CLAM(SOMEWHAT_SENSITIVE),
    MIDGE(TOLERANT),
    BLACK_FLY(TOLERANT),
    WORM(TOLERANT),
    LEECH(TOLERANT),
    POUCH_SNAIL(TOLERANT);

    private final Sensitivity sensitivity;

    Kind(Sensitivity sensitivity) {
        this.sensitivity = sensitivity;
    }

    public Sensitivity sensitivity() {
        return sensitivity;
    }
}
