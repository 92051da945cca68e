package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;

/** What would narrow a forecast most, as one sentence; empty where nothing would tell much. */
final class NarrowWording {
    private NarrowWording() {}

    /** What somebody could read now. */
    static String reading(TankForecast row) {
        if (row.telling().isPresent()) {
            return reading(row.telling().get().analyte()) + " now would tell most.";
        }
        return row.forecast().reasons().stream().map(NarrowWording::missing).flatMap(Optional::stream)
                .findFirst().map(what -> what + " would tell most.").orElse("");
    }

    /** The same, or a fact that nobody has written down. */
    static String readingOrFact(TankInput input, Optional<TankForecast> row) {
        String reading = row.map(NarrowWording::reading).orElse("");
        if (!reading.isEmpty()) {
            return reading;
        }
        if (input.lot().isEmpty()) {
            return "To write down how many eggs came, and when, would tell most.";
        }
        boolean nitriteMatters = row.isPresent() && row.get().forecast().reasons().stream()
                .anyMatch(reason -> reason.driver().equals(Optional.of(Driver.NITRITE)));
        return nitriteMatters && input.tank().chlorideMgPerL().isEmpty()
                ? "The chloride of the tap water would tell most: nitrite's limit goes by it." : "";
    }

    private static Optional<String> missing(Reason reason) {
        return switch (reason.kind()) {
            case NO_READINGS, SILENCE -> Optional.of("A reading of anything");
            case SERIES_NOT_READ -> reason.driver().flatMap(NarrowWording::analyte).map(NarrowWording::reading);
            default -> Optional.empty();
        };
    }

    private static Optional<Analyte> analyte(Driver series) {
        return series == Driver.UN_IONISED_AMMONIA ? Optional.of(Analyte.TOTAL_AMMONIA)
                : Analyte.ofCode(series.code());
    }

    private static String reading(Analyte analyte) {
        String name = Analytes.inSentence(analyte.code());
        boolean vowel = "aeiou".indexOf(name.charAt(0)) >= 0;
        return (vowel ? "An " : "A ") + name + " reading";
    }
}
