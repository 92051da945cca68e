package org.tankrounds.rounds;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Forecast;

/**
 * The ranking as CSV: UTF-8, lines ended by a line feed; chance with 4 decimals, exposure with 3, hours to a limit
 * whole, the age of a reading with 1.
 */
final class RankingCsv {

    private final CsvWriter csv;

    RankingCsv(Writer out) {
        csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out);
        csv.writeRecord("as_of", "rank", "tank", "chance", "exposure", "driver", "hours_to_limit",
                "reading_age_hours");
    }

    void write(List<Forecast> ranked) {
        int rank = 1;
        for (Forecast forecast : ranked) {
            csv.writeRecord(
                    forecast.asOf().toString(),
                    String.valueOf(rank++),
                    forecast.tank(),
                    fixed(forecast.chance(), 4),
                    fixed(forecast.exposure(), 3),
                    forecast.driver().code(),
                    fixed(forecast.hoursToLimit(), 0),
                    fixed(forecast.readingAgeHours(), 1));
        }
    }

    void flush() throws IOException {
        csv.flush();
    }

    private static String fixed(OptionalDouble number, int decimals) {
        return number.isPresent() ? fixed(number.getAsDouble(), decimals) : "";
    }

    private static String fixed(double number, int decimals) {
        return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }
}
