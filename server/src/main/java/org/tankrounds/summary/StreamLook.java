package org.tankrounds.summary;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.OptionalDouble;
import org.tankrounds.release.Site;
import org.tankrounds.release.StreamCheck;
import org.tankrounds.stream.StreamSample;

/**
 * A look at a stream in the season: its water, and the small animals that live in it.
 *
 * @param zone on whose clock its day is printed
 */
record StreamLook(StreamCheck check, Site site, ZoneId zone) {

    LocalDate day() {
        return check.at().atZone(zone).toLocalDate();
    }

    StreamSample sample() {
        return check.sample();
    }

    /** % of what water of that temperature holds at the site. */
    OptionalDouble saturationPercent() {
        return check.saturationPercent(site);
    }
}
