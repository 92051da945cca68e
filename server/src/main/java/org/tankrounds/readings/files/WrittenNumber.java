package org.tankrounds.readings.files;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number as a cell has it, perhaps with its unit behind it. */
final class WrittenNumber {
    private static final Pattern FORM = Pattern.compile(
            "([-+\u2212]?\\d[\\d.,\u00a0\u202f']{0,15})\\s*([°º]?\\s?[CF]|mg/?l|%|ppm|pH)?", Pattern.CASE_INSENSITIVE);
    private static final Set<String> NOTHING = Set.of("", "-", "--", "---", "—", "n/a", "na", "#n/a", "nan", "null",
            "none", "nil", "err", "error", "err.", "fault", "fail", "open", "short", "ofl", "ovr", "over", "under",
            "inf", "-inf", "no data", "nodata", "disconnected", "no sensor", "#value!", "#div/0!", "?", "***");

    private WrittenNumber() {}

    /** Whether the logger said by this that it has no value. */
    static boolean isNothing(String cell) {
        return NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    static boolean isOne(String cell) {
        return FORM.matcher(cell.strip()).matches();
    }

    /** The unit behind the number, as it stands there; empty for none. */
    static String unit(String cell) {
        Matcher form = FORM.matcher(cell.strip());
        return form.matches() && form.group(2) != null ? form.group(2) : "";
    }

    /** @param mark of the decimals; the other one can only group thousands */
    static Optional<BigDecimal> read(String cell, char mark) {
        Matcher form = FORM.matcher(cell.strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        char other = mark == '.' ? ',' : '.';
        String digits = form.group(1).replace('\u2212', '-').replaceAll("[\u00a0\u202f']", "");
        String grouped = "[-+]?\\d{1,3}(\\" + other + "\\d{3})+(\\" + mark + "\\d*)?";
        if (digits.indexOf(other) >= 0 && !digits.matches(grouped)) {
            return Optional.empty();
        }
        String plain = digits.replace(Character.toString(other), "").replace(mark, '.').replaceFirst("\\.$", "");
        return plain.matches("[-+]?\\d+(\\.\\d+)?") ? Optional.of(new BigDecimal(plain)) : Optional.empty();
    }

    /** The decimal mark of a cell that can have one only; empty where there is none or both are possible. */
    static Optional<Character> mark(String cell) {
        Matcher form = FORM.matcher(cell.strip());
        if (!form.matches()) {
            return Optional.empty();
        }
        int point = form.group(1).lastIndexOf('.');
        int comma = form.group(1).lastIndexOf(',');
        return point < 0 && comma < 0 ? Optional.empty() : Optional.of(point > comma ? '.' : ',');
    }
}
