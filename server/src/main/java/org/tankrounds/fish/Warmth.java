package org.tankrounds.fish;

import java.util.List;
import org.tankrounds.fish.WarmthPath.Side;

/** A tank's temperature as it was read and is to be expected, with how cold and how warm it may be besides. */
public record Warmth(WarmthPath cold, WarmthPath middle, WarmthPath warm) {

    /**
     * @param trace oldest first
     * @param usualC taken where nothing was read
     */
    public static Warmth of(List<DatedTemperature> trace, double usualC) {
        return new Warmth(new WarmthPath(trace, usualC, Side.COLD), new WarmthPath(trace, usualC, Side.MIDDLE),
                new WarmthPath(trace, usualC, Side.WARM));
    }

    public WarmthPath of(Side side) {
        return switch (side) {
            case COLD -> cold;
            case MIDDLE -> middle;
            case WARM -> warm;
        };
    }
}
