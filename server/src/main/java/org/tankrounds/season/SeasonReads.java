package org.tankrounds.season;

import org.tankrounds.places.TankRepository;
import org.tankrounds.readings.ObservationRepository;

/** What the pages of the season read together. */
public record SeasonReads(
        SeasonRepository seasons, LotRepository lots, CountRepository counts, DeathCauseRepository causes,
        TankRepository tanks, ObservationRepository observations) {}
