package org.tankrounds.readings;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.tankrounds.web.RefusedException;

/**
 * A pack of records in SenML (RFC 8428), with base fields and relative times resolved (§4.6). What a record means to
 * this service is {@link SenmlMeaning}'s.
 */
final class SenmlPack {
    static final int MOST_RECORDS = 5_000;
    static final String TITLE = "The pack cannot be taken as it is. Nothing was stored.";

    /** §4.5.3: less than this is relative to now. */
    private static final BigDecimal ABSOLUTE_FROM_S = BigDecimal.valueOf(1L << 28);
    /** Further off than any clock shows; longer numbers need not be written out. */
    private static final BigDecimal LAST_S = BigDecimal.valueOf(100_000_000_000L);
    /** §4.4; by RFC 9100 bits beyond those of 10 are features, of which 16 is secondary units (from memory). */
    private static final int VERSION = 10;
    private static final int SECONDARY_UNITS = 1 << 4;
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][-A-Za-z0-9:./_]*");
    private static final Set<String> TEXTS = Set.of("bn", "bu", "n", "u", "vs", "vd");
    private static final Set<String> NUMBERS = Set.of("bt", "bv", "bs", "bver", "v", "s", "t", "ut");
    private static final List<String> VALUES = List.of("v", "vs", "vb", "vd");

    /**
     * One record, resolved.
     *
     * @param at JSON pointer
     * @param unit empty where neither the record nor a base has one
     * @param value empty where the record has a text or no value
     * @param text empty where the record has a number
     * @param exact whether its time is its own, and not only that of its coming
     */
    record Resolved(String at, String name, String unit, Optional<BigDecimal> value, Optional<String> text,
            Instant time, boolean exact) {}

    private final Instant now;
    private final Faults faults;
    private String baseName = "";
    private String baseUnit = "";
    private BigDecimal baseTime = BigDecimal.ZERO;
    private Optional<BigDecimal> baseValue = Optional.empty();
    private final Set<Integer> versions = new HashSet<>();

    private SenmlPack(Instant now, Faults faults) {
        this.now = now;
        this.faults = faults;
    }

    /** @param faults hears of every record that cannot be taken */
    static List<Resolved> resolve(JsonNode body, Instant now, Faults faults) {
        if (!body.isArray() || body.isEmpty()) {
            faults.add("", "A SenML pack is a JSON array of records, at least one.");
            return List.of();
        }
        if (body.size() > MOST_RECORDS) {
            throw RefusedException.of(413, "A pack has at most 5,000 records. Nothing was stored; send it in parts.");
        }
        return new SenmlPack(now, faults).records(body);
    }

    private List<Resolved> records(JsonNode body) {
        List<Resolved> resolved = new ArrayList<>();
        for (int i = 0; i < body.size(); i++) {
            record(body.get(i), "/" + i).ifPresent(resolved::add);
        }
        if (versions.size() > 1) {
            faults.add("", "All records of a pack have the same bver.");
        }
        return resolved;
    }

    private Optional<Resolved> record(JsonNode record, String at) {
        if (!record.isObject()) {
            faults.add(at, "A record is a JSON object.");
            return Optional.empty();
        }
        if (!isWellFormed(record, at)) {
            return Optional.empty();
        }
        takeBases(record, at);
        String name = baseName + record.path("n").asText("");
        if (!NAME.matcher(name).matches()) {
            faults.add(at + "/n", "The name (bn and n together) begins with a letter or a digit and has nothing but"
                    + " letters, digits and - : . / _ in it.");
            return Optional.empty();
        }
        return isOneValue(record, at) ? resolved(record, at, name) : Optional.empty();
    }

    private boolean isWellFormed(JsonNode record, String at) {
        boolean sound = true;
        for (Map.Entry<String, JsonNode> field : record.properties()) {
            String fault = fault(field.getKey(), field.getValue());
            if (!fault.isEmpty()) {
                faults.add(at + "/" + field.getKey().replace("~", "~0").replace("/", "~1"), fault);
                sound = false;
            }
        }
        return sound;
    }

    /** §4.4: what is not known is passed over, unless its name ends with "_". */
    private static String fault(String name, JsonNode value) {
        if (name.endsWith("_")) {
            return "A field whose name ends with _ has to be understood, and this one is not.";
        }
        if (TEXTS.contains(name) && !value.isTextual()) {
            return name + " is a text.";
        }
        if (name.equals("vb") && !value.isBoolean()) {
            return "vb is true or false.";
        }
        if (NUMBERS.contains(name) && !(value.isNumber() && ReadingParser.isWritable(value.decimalValue()))) {
            return name + " is a JSON number of at most 15 digits before and after the point.";
        }
        return "";
    }

    private void takeBases(JsonNode record, String at) {
        baseName = record.path("bn").asText(baseName);
        baseUnit = record.path("bu").asText(baseUnit);
        baseTime = record.has("bt") ? record.get("bt").decimalValue() : baseTime;
        baseValue = record.has("bv") ? Optional.of(record.get("bv").decimalValue()) : baseValue;
        if (record.has("bver")) {
            version(record.get("bver"), at + "/bver");
        }
    }

    private void version(JsonNode node, String at) {
        BigDecimal version = node.decimalValue();
        boolean whole = version.signum() > 0 && version.stripTrailingZeros().scale() <= 0;
        boolean known = whole && (version.compareTo(BigDecimal.valueOf(VERSION)) <= 0
                || version.compareTo(BigDecimal.valueOf(VERSION | SECONDARY_UNITS)) == 0);
        if (known) {
            versions.add(version.intValue());
        } else {
            faults.add(at, "This is version 10 of SenML, or 26 with secondary units; no other is understood.");
        }
    }

    private boolean isOneValue(JsonNode record, String at) {
        List<String> values = VALUES.stream().filter(record::has).toList();
        if (values.size() > 1) {
            faults.add(at, "A record has one value; this one has " + String.join(" and ", values) + ".");
            return false;
        }
        if (values.isEmpty() && baseValue.isEmpty()) {
            faults.add(at + "/v", record.has("s") ? "A sum (s) alone says nothing of the water now. Send values (v)."
                    : "There is no value (v).");
            return false;
        }
        return true;
    }

    private Optional<Resolved> resolved(JsonNode record, String at, String name) {
        BigDecimal seconds = baseTime.add(record.has("t") ? record.get("t").decimalValue() : BigDecimal.ZERO);
        boolean exact = seconds.compareTo(ABSOLUTE_FROM_S) >= 0;
        Instant time = exact ? Instant.EPOCH : now;
        if (seconds.abs().compareTo(LAST_S) > 0 || !Judge.isPossible(after(time, seconds), now)) {
            faults.add(at + "/t", "The time (bt and t together) lies between 2000-01-01T00:00:00Z and seven days from"
                    + " now, in seconds since 1970 or, below 2^28, from now.");
            return Optional.empty();
        }
        boolean number = record.has("v") || VALUES.stream().noneMatch(record::has);
        Optional<BigDecimal> value = number ? Optional.of(baseValue.orElse(BigDecimal.ZERO)
                .add(record.has("v") ? record.get("v").decimalValue() : BigDecimal.ZERO)) : Optional.empty();
        return Optional.of(new Resolved(at, name, record.path("u").asText(baseUnit), value.map(ReadingParser::plain),
                number ? Optional.empty() : Optional.of(text(record)), after(time, seconds), exact));
    }

    private static String text(JsonNode record) {
        return record.path("vs").asText(record.path("vb").asText(record.path("vd").asText("")));
    }

    /** Kept to the microsecond. */
    private static Instant after(Instant from, BigDecimal seconds) {
        long micros = seconds.movePointRight(6).setScale(0, RoundingMode.HALF_UP).longValue();
        return from.plus(micros, ChronoUnit.MICROS).truncatedTo(ChronoUnit.MICROS);
    }
}
