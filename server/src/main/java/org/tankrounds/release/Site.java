package org.tankrounds.release;

import java.util.Optional;
import java.util.OptionalDouble;

/** A place at a stream where fish may be released while an approval says so, and where the stream is looked at. */
public record Site(int siteId, Details details) {

    /** Degrees, WGS 84. */
    public record Point(double north, double east) {}

    /**
     * @param water the stream, river or lake, as on the map
     * @param wayThere county, access, parking
     * @param elevationM height above the sea, m; empty counts as sea level
     */
    public record Details(String name, String water, Optional<String> wayThere, Optional<Point> point,
            OptionalDouble elevationM) {}

    public String name() {
        return details.name();
    }

    public String address() {
        return "/release/sites/" + siteId;
    }
}
