package org.tankrounds.summary;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import org.tankrounds.release.DayRepository;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.release.Site;
import org.tankrounds.release.SiteRepository;
import org.tankrounds.release.StreamCheckRepository;
import org.tankrounds.season.CountRepository;
import org.tankrounds.season.Season;

/** What was written down at the water in a season. */
public final class WatersideReads {
    private final CountRepository counts;
    private final DayRepository days;
    private final SiteRepository sites;
    private final StreamCheckRepository checks;

    public WatersideReads(
            CountRepository counts, DayRepository days, SiteRepository sites, StreamCheckRepository checks) {
        this.counts = counts;
        this.days = days;
        this.sites = sites;
        this.checks = checks;
    }

    /** By the number of the count entry that says how many fish they were. */
    Map<Integer, ReleaseDay> days(DSLContext tx, int chapterId, Season season) {
        Map<UUID, ReleaseDay> byForm = days.list(tx, chapterId).stream()
                .collect(Collectors.toMap(ReleaseDay::submission, Function.identity(), (one, other) -> one));
        Map<Integer, ReleaseDay> byEntry = new HashMap<>();
        counts.formsOfReleases(tx, chapterId, season.seasonId()).forEach((entryId, form) -> {
            if (byForm.containsKey(form)) {
                byEntry.put(entryId, byForm.get(form));
            }
        });
        return byEntry;
    }

    /** The oldest first. */
    List<StreamLook> looks(DSLContext tx, int chapterId, Season season, ZoneId zone) {
        Map<Integer, Site> byId = sites.list(tx, chapterId).stream()
                .collect(Collectors.toMap(Site::siteId, Function.identity()));
        return checks.listBetween(tx, chapterId, season.from(zone), season.until(zone)).stream()
                .map(check -> new StreamLook(check, byId.get(check.siteId()), zone)).toList();
    }
}
