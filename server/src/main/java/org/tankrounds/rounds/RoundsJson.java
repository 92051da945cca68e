package org.tankrounds.rounds;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.tankrounds.forecast.Forecast;

/** The ranking as the public interface lays it out. */
final class RoundsJson {
    private static final int DECIMALS_OF_CHANCE = 4;
    private static final int DECIMALS_OF_EXPOSURE = 3;
    private static final int DECIMALS_OF_HOURS = 1;

    private RoundsJson() {}

    static ObjectNode of(Instant asOf, List<Forecast> ranked, int limit) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("asOf", asOf.toString());
        ArrayNode rounds = body.putArray("rounds");
        for (int i = 0; i < Math.min(limit, ranked.size()); i++) {
            Forecast forecast = ranked.get(i);
            ObjectNode row = rounds.addObject();
            row.put("asOf", asOf.toString());
            row.put("rank", i + 1);
            row.put("tank", forecast.tank());
            row.put("chance", rounded(forecast.chance(), DECIMALS_OF_CHANCE));
            row.put("exposure", rounded(forecast.exposure(), DECIMALS_OF_EXPOSURE));
            row.put("driver", forecast.driver().code());
            row.put("hoursToLimit", rounded(forecast.hoursToLimit(), DECIMALS_OF_HOURS));
            row.put("readingAgeHours", rounded(forecast.readingAgeHours(), DECIMALS_OF_HOURS));
        }
        return body;
    }

    private static BigDecimal rounded(OptionalDouble value, int decimals) {
        return value.isPresent() ? rounded(value.getAsDouble(), decimals) : null;
    }

    private static BigDecimal rounded(double value, int decimals) {
        return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
