package org.tankrounds.advice;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import org.tankrounds.belief.TemperatureBelief;
import org.tankrounds.forecast.Driver;

/**
 * How far to trust the courses about each sort of act. Made by {@code tankrounds lab trust} from worlds drawn
 * at random; the named worlds that effects are reported for are not among them, nor those that experience is
 * learned from.
 */
public record Trusts(Map<Sort, Trust> bySort) {

    private static final String RESOURCE = "org.tankrounds.advice.trust";

    /** Acts whose effects come true alike. */
    public enum Sort {
        WATER_CHANGE_FOR_PH, WATER_CHANGE, SALT, SKIP_FEED_FOR_AMMONIA, SKIP_FEED, BICARBONATE,
        CHILLER_STANDS, CHILLER_MAY_STAND, ICE, MORE_AIR, THIOSULFATE, ALL_TOGETHER;

        /** @param standsChance of the tank's chiller */
        public static Sort of(Act act, double standsChance) {
            return switch (act.kind()) {
                case WATER_CHANGE -> isAgainst(act, Driver.PH) ? WATER_CHANGE_FOR_PH : WATER_CHANGE;
                case SALT -> SALT;
                case SKIP_FEED ->
                    isAgainst(act, Driver.UN_IONISED_AMMONIA) ? SKIP_FEED_FOR_AMMONIA : SKIP_FEED;
                case BICARBONATE -> BICARBONATE;
                case CHECK_CHILLER -> standsChance > TemperatureBelief.LIKELY ? CHILLER_STANDS : CHILLER_MAY_STAND;
                case ICE -> ICE;
                case MORE_AIR -> MORE_AIR;
                case THIOSULFATE -> THIOSULFATE;
                case LEAVE_WATER, TEST_WATER_FIRST, LEAVE_ALKALINITY, ASK_FOR_READING, LOOK_AT_FISH, CALL_FOR_HELP ->
                    throw new IllegalArgumentException("the water feels nothing of " + act.kind());
            };
        }

        private static boolean isAgainst(Act act, Driver driver) {
            return act.driver().filter(driver::equals).isPresent();
        }

        private String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public Trusts {
        bySort = Collections.unmodifiableMap(new TreeMap<>(bySort));
    }

    /** The courses are taken at their word; to learn from. */
    public static Trusts full() {
        return new Trusts(new TreeMap<>());
    }

    /** As it ships. */
    static Trusts shipped() {
        return Shipped.TRUSTS;
    }

    Trust in(Sort sort) {
        return bySort.getOrDefault(sort, Trust.FULL);
    }

    /** The lines of its properties file: for each sort the two numbers of {@link Trust}. */
    public List<String> lines() {
        return Arrays.stream(Sort.values()).filter(bySort::containsKey)
                .map(sort -> sort.key() + "=" + bySort.get(sort).words()).toList();
    }

    /** Read once, when first needed. */
    private static final class Shipped {
        private static final Trusts TRUSTS = read(ResourceBundle.getBundle(RESOURCE, Locale.ROOT));

        private static Trusts read(ResourceBundle file) {
            Map<Sort, Trust> bySort = new EnumMap<>(Sort.class);
            for (Sort sort : Sort.values()) {
                bySort.put(sort, Trust.read(file.getString(sort.key())));
            }
            return new Trusts(bySort);
        }
    }
}
