package org.tankrounds.rounds;

import java.util.Optional;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Reason;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;

/** What would narrow a forecast most, as one sentence; empty where nothing would tell much. */
final class NarrowWording {
    private NarrowWording() {}

    /** What somebody could read now and would move the odds. */
    static Optional<Saying> reading(TankForecast row) {
        return row.telling().map(telling -> Saying.of("reasons.tellsMostNow", reading(telling.analyte())));
    }

    /** The same, else what nobody has read or written down. */
    static Optional<Saying> readingOrFact(TankInput input, Optional<TankForecast> row) {
        return row.flatMap(NarrowWording::reading).or(() -> unread(row).or(() -> fact(input, row))
                .map(what -> Saying.of("reasons.tellsMost", what)));
    }

    private static Optional<Saying> unread(Optional<TankForecast> row) {
        return row.stream().flatMap(held -> held.forecast().reasons().stream())
                .flatMap(reason -> missing(reason).stream()).findFirst();
    }

    private static Optional<Saying> fact(TankInput input, Optional<TankForecast> row) {
        if (input.lot().isEmpty()) {
            return Optional.of(Saying.of("reasons.eggs"));
        }
        boolean nitriteMatters = row.stream().flatMap(held -> held.forecast().reasons().stream())
                .anyMatch(reason -> reason.driver().equals(Optional.of(Driver.NITRITE)));
        return nitriteMatters && input.tank().chlorideMgPerL().isEmpty()
                ? Optional.of(Saying.of("reasons.tapChloride")) : Optional.empty();
    }

    private static Optional<Saying> missing(Reason reason) {
        return switch (reason.kind()) {
            case NO_READINGS, SILENCE -> Optional.of(Saying.of("reasons.anyReading"));
            case SERIES_NOT_READ -> reason.driver().flatMap(NarrowWording::analyte).map(NarrowWording::reading);
            default -> Optional.empty();
        };
    }

    private static Optional<Analyte> analyte(Driver series) {
        return series == Driver.UN_IONISED_AMMONIA ? Optional.of(Analyte.TOTAL_AMMONIA)
                : Analyte.ofCode(series.code());
    }

    private static Saying reading(Analyte analyte) {
        return Saying.of("reasons.reading." + analyte.code());
    }
}
