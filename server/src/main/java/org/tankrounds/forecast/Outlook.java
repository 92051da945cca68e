package org.tankrounds.forecast;

import java.util.Objects;
import java.util.Optional;

/**
 * A forecast and what a person is told beside it.
 *
 * @param ways its spread: when, of twenty ways it could go, the water goes beyond a limit
 * @param telling the reading that would narrow it most; empty where none would tell much
 * @param held what it takes for true
 */
public record Outlook(Forecast forecast, Ways ways, Optional<Telling> telling, Held held) {

    public Outlook {
        Objects.requireNonNull(forecast, "forecast");
        Objects.requireNonNull(ways, "ways");
        Objects.requireNonNull(telling, "telling");
        Objects.requireNonNull(held, "held");
    }
}
