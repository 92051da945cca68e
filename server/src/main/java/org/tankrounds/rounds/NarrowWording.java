package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;

/** What would narrow a forecast most, as one sentence; empty where nothing would tell much. */
final class NarrowWording {
    private NarrowWording() {}

    /** What somebody could read now and would move the odds. */
    static String reading(TankForecast row) {
        return row.telling().map(telling -> reading(telling.analyte()) + " now would tell most.").orElse("");
    }

    /** The same, else what nobody has read or written down. */
    static String readingOrFact(TankInput input, Optional<TankForecast> row) {
        String reading = row.map(NarrowWording::reading).orElse("");
        return !reading.isEmpty() ? reading
                : unread(row).or(() -> fact(input, row)).map(what -> what + " would tell most.").orElse("");
    }

    private static Optional<String> unread(Optional<TankForecast> row) {
        return row.stream().flatMap(held -> held.forecast().reasons().stream())
                .flatMap(reason -> missing(reason).stream()).findFirst();
    }

    private static Optional<String> fact(TankInput input, Optional<TankForecast> row) {
        if (input.lot().isEmpty()) {
            return Optional.of("To write down how many eggs came, and when,");
        }
        boolean nitriteMatters = row.stream().flatMap(held -> held.forecast().reasons().stream())
                .anyMatch(reason -> reason.driver().equals(Optional.of(Driver.NITRITE)));
        return nitriteMatters && input.tank().chlorideMgPerL().isEmpty()
                ? Optional.of("The chloride of the tap water") : Optional.empty();
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
