package org.tankrounds.release;

import java.util.Optional;
import org.tankrounds.places.Tank;
import org.tankrounds.season.FishSample;
import org.tankrounds.words.Saying;

/**
 * The fish of a tank that a plan may take.
 *
 * @param alive by count
 * @param spread more or less that these may be
 * @param planned of them in other plans
 * @param measured last in this season; empty where nobody did
 */
record TankStock(Tank tank, int alive, int spread, int planned, Optional<FishSample> measured) {

    String place() {
        return tank.school() + ", " + tank.classroom();
    }

    /** As readings count it: sea level where nobody gave one. */
    double elevationM() {
        return tank.elevationM().orElse(0);
    }

    /** The most that there can be, less those that go elsewhere. */
    int most() {
        return Math.max(0, alive + spread - planned);
    }

    boolean hasFish() {
        return alive + spread > 0;
    }

    /** Why so many cannot be planned, with what is known. */
    Optional<Saying> refusal(int fish) {
        if (fish <= most()) {
            return Optional.empty();
        }
        if (planned > 0) {
            return Optional.of(Saying.of("release.plan.fish.tooManyPlanned", alive, spread, planned));
        }
        return Optional.of(spread == 0 ? Saying.of("release.plan.fish.tooMany", alive)
                : Saying.of("release.plan.fish.tooManyAbout", alive, spread));
    }
}
