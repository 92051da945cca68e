package org.tankrounds.fish;

/** Where a lot of trout stands in its life; which limits hold depends on it. */
public enum Stage {
    /** From fertilisation to hatch. */
    EGG,
    /** Hatched, living on the yolk (alevin). */
    SAC_FRY,
    /** From first feeding (swim-up) on. */
    FEEDING;

    /** Whether the stricter limits for eggs and sac fry hold. */
    public boolean isBeforeFirstFeeding() {
        return this != FEEDING;
    }
}
