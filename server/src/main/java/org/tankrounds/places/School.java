package org.tankrounds.places;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A school that the chapter mentors.
 *
 * @param code for addresses
 * @param classrooms what stands on the doors, by name
 */
public record School(int schoolId, String code, Details details, List<String> classrooms) {

    /**
     * What the coordinator writes down.
     *
     * @param place where to drive, in words
     * @param elevationM height above the sea, m; empty counts as sea level
     * @param zone the class's clock
     */
    public record Details(String name, Optional<String> place, OptionalDouble elevationM, ZoneId zone) {}

    public String name() {
        return details.name();
    }
}
