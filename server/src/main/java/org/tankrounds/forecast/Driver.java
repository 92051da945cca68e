package org.tankrounds.forecast;

import java.util.Optional;
import java.util.stream.Stream;

/** What adds most to a tank's exposure or chance: one of the limits, or a reason to worry about all. */
public enum Driver {
    TEMPERATURE("temperature"),
    UN_IONISED_AMMONIA("un_ionised_ammonia"),
    NITRITE("nitrite"),
    DISSOLVED_OXYGEN("dissolved_oxygen"),
    PH("ph"),
    CHLORINE("chlorine"),
    /** Fish were found dead: something is wrong even if no reading shows it. */
    DEATHS("deaths"),
    /** Nobody has read the tank for long. */
    SILENCE("silence");

    private final String code;

    Driver(String code) {
        this.code = code;
    }

    /** The public interface's code, such as {@code un_ionised_ammonia}. */
    public String code() {
        return code;
    }

    public static Optional<Driver> ofCode(String code) {
        return Stream.of(values()).filter(driver -> driver.code.equals(code)).findFirst();
    }
}
