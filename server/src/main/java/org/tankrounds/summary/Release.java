package org.tankrounds.summary;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.CountMethod;

/**
 * Fish of one tank that went into a stream on a day.
 *
 * @param entryId of the count in which it was written down
 * @param approval number of the permit or approval; empty where nobody wrote it down
 * @param spread fish more or less that the count may be off, 95 %
 * @param tankC the tank's temperature nearest in time on that day, °C; empty where none was read
 * @param seen what was written down at the water; empty where the count alone tells of it
 */
record Release(int entryId, String place, String approval, LocalDate day, String schoolCode, String school,
        String classroom, String tank, int fish, int spread, CountMethod method, OptionalDouble tankC,
        Optional<ReleaseDay> seen) {

    static final Comparator<Release> BY_SITE_AND_DATE = Comparator.comparing(Release::place)
            .thenComparing(Release::approval).thenComparing(Release::day).thenComparing(Release::school)
            .thenComparing(Release::classroom).thenComparing(Release::tank).thenComparing(Release::entryId);
}
