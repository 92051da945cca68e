package org.tankrounds.lab.evaluation;

import java.time.Instant;
import org.tankrounds.lab.TankSeason;

/** What answers for a tank at a moment. */
interface Oracle {
    Answer ask(TankSeason tank, Instant asOf);
}
