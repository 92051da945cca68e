package org.tankrounds.testing;

import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.places.Tank;

/** Tanks of which a test needs no more than that they are some. */
public final class SomeTank {
    private SomeTank() {}

    public static Tank ofNumber(int tankId) {
        return new Tank(tankId, "b7k2m" + tankId, new Tank.Room(tankId, "Room 12", "s1", "Alderwhistle School"),
                ZoneId.of("America/New_York"), OptionalDouble.empty(), 1, 200, OptionalDouble.of(11), "sponge",
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                Optional.empty(), "Cel", Optional.empty());
    }
}
