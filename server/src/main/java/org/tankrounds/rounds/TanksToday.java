package org.tankrounds.rounds;

import java.time.Instant;
import org.jooq.DSLContext;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;

/** Where other pages get what is known of a tank today. */
public final class TanksToday {
    private final TankRepository tanks;
    private final TankInputs inputs;
    private final ForecastRepository forecasts;

    public TanksToday(TankRepository tanks, TankInputs inputs, ForecastRepository forecasts) {
        this.tanks = tanks;
        this.inputs = inputs;
        this.forecasts = forecasts;
    }

    /** The tank alone. As {@link #load}, refuses those who may not see it. */
    public Tank get(DSLContext tx, Caller caller, String tankCode) {
        return tanks.get(tx, caller, tankCode);
    }

    /** @throws org.tankrounds.web.NotFoundException where the caller may not see such a tank */
    public TankToday load(DSLContext tx, Caller caller, String tankCode, Instant now) {
        Tank tank = get(tx, caller, tankCode);
        return new TankToday(inputs.load(tx, caller.chapterId(), tank, now),
                forecasts.find(tx, caller.chapterId(), tank.tankId()), now);
    }
}
