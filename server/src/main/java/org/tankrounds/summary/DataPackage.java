package org.tankrounds.summary;

import static org.tankrounds.summary.PackageTable.ordered;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.belief.Observation;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.MeasurementRows;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.Lot;
import org.tankrounds.season.MovedAs;
import org.tankrounds.season.Season;
import org.tankrounds.summary.SeasonSummary.Heading;
import org.tankrounds.summary.Column.Kind;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Words;

/**
 * A season as a Data Package (datapackage.org, 2.0) in one zip: the summary and the rows that it is made of, with the
 * vocabulary of WQX beside our own. Free text, people and addresses are left out. The measurements of a probe are
 * many, so they alone are never held: they go from the database into the zip.
 */
public final class DataPackage {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final String TEXT = "string";
    private static final String WHOLE = "integer";
    private static final String NUMBER = "number";
    private static final String OFF = "More or less that the count may be off, 95 %.";

    private final SummaryReads reads;
    private final MeasurementRows measurements;

    public DataPackage(SummaryReads reads, MeasurementRows measurements) {
        this.reads = reads;
        this.measurements = measurements;
    }

    void write(DSLContext tx, int chapterId, Season season, Stamp stamp, OutputStream out) {
        try {
            new Writing(tx, chapterId, season, stamp, out).write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private final class Writing {
        private final DSLContext tx;
        private final int chapterId;
        private final Season season;
        private final Stamp stamp;
        private final FixedZip zip;
        private final List<Tank> tanks = new ArrayList<>();
        private final List<SeasonSummary.Row> rows = new ArrayList<>();

        private final PackageTable tankTable = new PackageTable("tanks",
                "Tanks that had fish or readings in the season")
                .required("tank", TEXT, "Public code.").required("school_code", TEXT, "").field("school", TEXT, "")
                .field("classroom", TEXT, "").required("time_zone", TEXT, "IANA name of the school's clock.")
                .field("volume_l", NUMBER, "Litres.").key("tank").head();
        private final PackageTable lotTable = new PackageTable("lots", "Eggs that came together into one tank")
                .required("tank", TEXT, "").required("lot", WHOLE, "Counts within the tank, as written down.")
                .required("eggs", WHOLE, "").required("received_at", "datetime", "UTC.")
                .required("day", "date", "On the school's calendar.")
                .field("thermal_units_deg_c_days", NUMBER, "Since fertilisation, on arrival; empty where nobody told.")
                .field("supplier", TEXT, "").field("certificate", TEXT, "Number of the health certificate.")
                .field("eyed_on", "date", "As the class saw it.").field("hatched_on", "date", "As the class saw it.")
                .field("first_feeding_on", "date", "As the class saw it.").required("counted_how", TEXT, "")
                .required("count_off_by_95", WHOLE, OFF).key("tank", "lot").refers("tank", "tanks", "tank").head();
        private final PackageTable entryTable = new PackageTable("count_entries",
                "What was written down of the number of fish, beside eggs that came and deaths that were read")
                .required("entry", WHOLE, "").required("kind", TEXT, "moved, thinned, released, counted or hatched.")
                .required("happened_at", "datetime", "UTC.").required("day", "date", "On the school's calendar.")
                .required("tank", TEXT, "That was counted, or that the fish left.")
                .field("to_tank", TEXT, "That moved fish went to.").required("fish", WHOLE, "")
                .required("counted_how", TEXT, "one_by_one, weighed, by_volume or guessed.")
                .required("count_off_by_95", WHOLE, OFF).field("site", TEXT, "Where fish that left went.")
                .field("approval", TEXT, "Number of the permit or approval, as written down.")
                .field("stage", TEXT, "Of what was moved: egg, sac_fry or feeding, as somebody saw it, else as the tank"
                        + " that it left had come; empty of all else.")
                .field("thermal_units_deg_c_days", NUMBER, "Of what was moved: since fertilisation, by the tank that"
                        + " it left; empty where that cannot tell, and of all else.")
                .key("entry").refers("tank", "tanks", "tank").refers("to_tank", "tanks", "tank").head();
        private final PackageTable deathTable = new PackageTable("deaths", "Found dead, by day and stage of life")
                .required("tank", TEXT, "").required("day", "date", "On the school's calendar.")
                .required("stage", TEXT, "egg, sac_fry or feeding, by the tank's own temperatures.")
                .required("dead", WHOLE, "").field("cause", TEXT, "What they are put down to; empty where nobody said.")
                .key("tank", "day", "stage").refers("tank", "tanks", "tank").head();
        private final PackageTable releaseTable = columns(new PackageTable("releases",
                "Released into a stream, by site and date")
                .required("entry", WHOLE, "").required("tank", TEXT, "").field("site", TEXT, "")
                .field("approval", TEXT, "").required("day", "date", "On the school's calendar.")
                .required("fish", WHOLE, "").required("counted_how", TEXT, "").required("count_off_by_95", WHOLE, OFF)
                .field("tank_temperature_deg_c", NUMBER, "Read nearest in time on that day."), WatersideColumns.SEEN)
                .key("entry").refers("entry", "count_entries", "entry").refers("tank", "tanks", "tank").head();
        private final PackageTable lengthTable = new PackageTable("release_lengths",
                "Lengths of a sample of the released, from the mouth to the fork of the tail")
                .required("entry", WHOLE, "").required("fish", WHOLE, "Counts in the order of measuring.")
                .required("length_mm", NUMBER, "").key("entry", "fish").refers("entry", "releases", "entry").head();
        private final PackageTable lookTable = columns(new PackageTable("stream_checks",
                "Looks at the streams of the release sites"), WatersideColumns.LOOKS).key("check").head();
        private final PackageTable animalTable = new PackageTable("stream_animals",
                "Animals that were found in a stream check")
                .required("check", WHOLE, "").required("animal", TEXT, "Group of the tally sheet.")
                .field("family", TEXT, "That the group stands for; empty where the sheet cannot tell.")
                .required("found", WHOLE, "").key("check", "animal").refers("check", "stream_checks", "check").head();
        private final PackageTable dayTable = new PackageTable("limit_days", "Each reading-day against the limit")
                .required("tank", TEXT, "").required("series", TEXT, "temperature, un_ionised_ammonia or nitrite.")
                .required("day", "date", "On the school's calendar.")
                .required("verdict", TEXT, "within, undecided or beyond.")
                .required("values", WHOLE, "").required("values_not_detected", WHOLE, "")
                .field("worst", NUMBER, "Detected value that is highest against its limit.").required("unit", TEXT, "")
                .key("tank", "series", "day").refers("tank", "tanks", "tank").head();
        private final PackageTable summaryTable = columns(new PackageTable("summary",
                "The summary per tank, school and chapter"), SummaryColumns.ALL).head();
        private final PackageTable actTable = new PackageTable("acts", "What was done to a tank and written down")
                .required("reading", TEXT, "Public code.").required("tank", TEXT, "")
                .required("done_at", "datetime", "UTC.")
                .required("act", TEXT, "feed or water_change.").required("value", NUMBER, "")
                .required("ucum_unit", TEXT, "UCUM.").required("doubtful", "boolean", "")
                .key("reading", "act").refers("tank", "tanks", "tank").head();
        private final PackageTable measurementTable = new PackageTable("measurements",
                "Every measurement that holds, in canonical units")
                .required("reading", TEXT, "Public code.").required("tank", TEXT, "")
                .required("measured_at", "datetime", "UTC.").required("analyte", TEXT, "As in the API.")
                .required("characteristic_name", TEXT, "WQX.")
                .field("method_speciation", TEXT, "WQX: what the number counts; empty where nothing can be mistaken.")
                .field("value", NUMBER, "Empty where it was not detected.").required("unit", TEXT, "WQX.")
                .required("ucum_unit", TEXT, "The same as UCUM.").field("detection_condition", TEXT, "WQX.")
                .field("detection_limit", NUMBER, "What it is below; empty where unknown.")
                .field("detection_limit_unit", TEXT, "WQX.")
                .field("half_step", NUMBER, "Half of what the method can tell apart; empty where unknown.")
                .required("doubtful", "boolean", "Marked as unlikely, or its time is in doubt: it counts nowhere.")
                .required("came_by", TEXT, "page, card, api, batch, file or probe.")
                .key("reading", "analyte").refers("tank", "tanks", "tank");

        Writing(DSLContext tx, int chapterId, Season season, Stamp stamp, OutputStream out) {
            this.tx = tx;
            this.chapterId = chapterId;
            this.season = season;
            this.stamp = stamp;
            this.zip = new FixedZip(out, stamp.at());
        }

        void write() throws IOException {
            reads.each(tx, chapterId, season, this::take);
            entries();
            Heading heading = reads.heading(tx, chapterId, season);
            summary(SeasonSummary.of(heading, rows, reads.looks(tx, chapterId, season)));
            // Those first that hold what others refer to.
            OutputStream stream = new BufferedOutputStream(zip.begin(measurementTable.path()), 1 << 16);
            measurementTable.into(stream).head();
            for (Tank tank : tanks) {
                measurements.each(tx, chapterId, tank.tankId(), season.from(tank.zone()), season.until(tank.zone()),
                        row -> take(tank, row));
            }
            stream.flush();
            zip.end();
            List<PackageTable> held = List.of(tankTable, lotTable, entryTable, deathTable, releaseTable, lengthTable,
                    lookTable, animalTable, actTable, dayTable, summaryTable);
            for (PackageTable table : held) {
                table.copyTo(zip.begin(table.path()));
                zip.end();
            }
            zip.begin("datapackage.json").write(JSON.writeValueAsString(descriptor(heading,
                    Stream.concat(held.stream(), Stream.of(measurementTable)).toList()))
                    .replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8));
            zip.end();
            zip.finish();
        }

        private void take(TankEvidence evidence) {
            Tank tank = evidence.tank();
            tanks.add(tank);
            rows.add(SummaryReads.row(evidence));
            tankTable.row(tank.code(), tank.room().schoolCode(), tank.school(), tank.classroom(), tank.zone().getId(),
                    tank.volumeL());
            List<Lot> lots = evidence.lots().stream().sorted(Comparator.comparing(Lot::lotId)).toList();
            for (int i = 0; i < lots.size(); i++) {
                Lot lot = lots.get(i);
                lotTable.row(tank.code(), i + 1, lot.eggs(), lot.receivedAt(), evidence.day(lot.receivedAt()),
                        lot.thermalUnitsC().isPresent() ? lot.thermalUnitsC().getAsDouble() : null,
                        lot.supplier().orElse(null), lot.certificate().orElse(null),
                        lot.seenOn().eyedOn().orElse(null), lot.seenOn().hatchedOn().orElse(null),
                        lot.seenOn().firstFeedingOn().orElse(null),
                        lot.method().code(), lot.spread());
            }
            evidence.deaths().forEach(dead -> deathTable.row(tank.code(), dead.day(), SummaryColumns.code(dead.stage()),
                    dead.fish(), dead.cause().map(cause -> cause.code()).orElse(null)));
            for (Series series : Series.values()) {
                evidence.days().days(series).forEach((day, of) -> dayTable.row(tank.code(), series.code(), day,
                        of.verdict().name().toLowerCase(Locale.ROOT), of.values(), of.notDetected(),
                        of.worst().map(worst -> Rounded.value(series, worst.value())).orElse(null), series.unit()));
            }
        }

        /** In the order in which they happened. */
        private void entries() {
            Map<Integer, Tank> byId = tanks.stream().collect(Collectors.toMap(Tank::tankId, Function.identity()));
            for (CountEntry entry : reads.entries(tx, chapterId, season)) {
                Tank tank = byId.get(entry.tankId());
                entryTable.row(entry.entryId(), entry.kind().code(), entry.at(),
                        entry.at().atZone(tank.zone()).toLocalDate(), tank.code(),
                        entry.toTankId().map(to -> byId.get(to).code()).orElse(null), entry.fish(),
                        entry.method().code(), entry.spread(), entry.place().orElse(null),
                        entry.approval().orElse(null), entry.stage().map(SummaryColumns::code).orElse(null),
                        thermalUnitsC(entry));
            }
        }

        private static Object thermalUnitsC(CountEntry entry) {
            OptionalDouble units = entry.movedAs().map(MovedAs::thermalUnitsC).orElse(OptionalDouble.empty());
            return units.isPresent() ? units.getAsDouble() : null;
        }

        private void summary(SeasonSummary summary) {
            summary.chapter().figures().releases().forEach(this::release);
            summary.looks().forEach(look -> {
                lookTable.row(cells(WatersideColumns.LOOKS, look).toArray());
                WatersideColumns.found(look).forEach(found -> animalTable.row(look.check().checkId(),
                        found.group().code(), found.group().family().map(SummaryColumns::code).orElse(null),
                        found.animals()));
            });
            summary.rows().forEach(row -> summaryTable.row(SummaryColumns.ALL.stream()
                    .map(column -> column.value().apply(row)).map(cell -> "".equals(cell) ? null : cell).toArray()));
        }

        private void release(Release one) {
            List<Object> cells = new ArrayList<>(Arrays.asList(one.entryId(), one.tank(), one.place(),
                    one.approval().isEmpty() ? null : one.approval(), one.day(), one.fish(), one.method().code(),
                    one.spread(), one.tankC().isPresent()
                            ? Rounded.value(Series.TEMPERATURE, one.tankC().getAsDouble()) : null));
            cells.addAll(cells(WatersideColumns.SEEN, one));
            releaseTable.row(cells.toArray());
            List<Double> lengthsMm = one.seen().map(ReleaseDay::lengthsMm).orElse(List.of());
            for (int i = 0; i < lengthsMm.size(); i++) {
                lengthTable.row(one.entryId(), i + 1, lengthsMm.get(i));
            }
        }

        private void take(Tank tank, MeasurementRows.Row row) {
            Observation seen = row.measured();
            Wqx wqx = Wqx.of(seen.analyte()).orElse(null);
            if (wqx != null) {
                Double halfStep = seen.halfStep() > 0 ? Double.valueOf(seen.halfStep()) : null;
                Double limit = seen.below() ? seen.value() > 0 ? Double.valueOf(seen.value()) : halfStep : null;
                measurementTable.row(row.reading(), tank.code(), seen.at(), seen.analyte().code(), wqx.characteristic(),
                        wqx.speciation().isEmpty() ? null : wqx.speciation(),
                        seen.below() ? null : (Object) seen.value(), wqx.unit(), wqx.ucum(),
                        seen.below() ? Wqx.NOT_DETECTED : null, limit, limit == null ? null : wqx.unit(), halfStep,
                        seen.doubtful(), row.channel());
            } else if (seen.analyte() != Analyte.DEATHS) {
                actTable.row(row.reading(), tank.code(), seen.at(), seen.analyte().code(), seen.value(),
                        seen.analyte().canonical().unit(), seen.doubtful());
            }
        }

        private Map<String, Object> descriptor(Heading heading, List<PackageTable> tables) {
            Map<String, Object> all = ordered("$schema", "https://datapackage.org/profiles/2.0/datapackage.json",
                    "name", "season-summary-" + heading.seasonCode(), "title", "Season " + heading.season() + ", "
                            + heading.chapter(), "description", String.join("\n\n", SummaryNotes.in(Words.english())));
            stamp.version().ifPresent(version -> all.put("version", Integer.toString(version)));
            all.put("created", stamp.at().toString());
            all.put("software", "Tankrounds " + stamp.software());
            all.put("sources", List.of(ordered("title", heading.chapter() + ": readings of its classes, from "
                    + heading.startsOn() + " to " + heading.endsOn())));
            all.put("keywords", List.of("trout", "classroom aquarium", "water quality"));
            all.put("resources", tables.stream().map(PackageTable::described).toList());
            return all;
        }

        private static <T> PackageTable columns(PackageTable table, List<Column<T>> columns) {
            columns.forEach(column -> table.field(column.name(), type(column.kind()), column.about()));
            return table;
        }

        private static <T> List<Object> cells(List<Column<T>> columns, T row) {
            List<Object> cells = new ArrayList<>();
            columns.forEach(column -> cells.add(column.value().apply(row)));
            return cells;
        }

        private static String type(Kind kind) {
            return switch (kind) {
                case TEXT -> TEXT;
                case COUNT -> WHOLE;
                case NUMBER, SHARE -> NUMBER;
                case TIME -> "datetime";
                case DAY -> "date";
            };
        }
    }
}
