package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.advice.Act;
import org.tankrounds.forecast.Driver;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;

/** Why a reading is asked for, where it is not plain from the reasons. */
final class AskWording {
    private AskWording() {}

    static Optional<Saying> why(Act act) {
        return Analyte.ofCode(act.asks())
                .flatMap(analyte -> why(analyte, act.driver().orElse(Driver.SILENCE))).map(Saying::of);
    }

    private static Optional<String> why(Analyte analyte, Driver driver) {
        boolean isAgainstNitrogen = driver == Driver.UN_IONISED_AMMONIA || driver == Driver.NITRITE;
        return switch (analyte) {
            case PH -> Optional.of("advice.ask.ph").filter(key -> isAgainstNitrogen);
            case ALKALINITY -> Optional.of(isAgainstNitrogen
                    ? "advice.ask.alkalinityBeforeChange" : "advice.ask.alkalinity");
            case CHLORIDE -> Optional.of("advice.ask.chloride");
            case CHLORINE -> Optional.of("advice.ask.chlorine").filter(key -> driver == Driver.DEATHS);
            case TOTAL_AMMONIA, NITRITE -> Optional.of("advice.ask.nitrogen").filter(key -> driver == Driver.PH);
            default -> Optional.empty();
        };
    }
}
