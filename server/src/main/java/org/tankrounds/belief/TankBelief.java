package org.tankrounds.belief;

import java.time.Instant;
import java.util.Optional;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.LotCalendar;
import org.tankrounds.water.OxygenSaturation;

/**
 * What is held of a tank's hidden state at a moment.
 *
 * @param facts the tank
 * @param asOf the moment
 * @param development how far its lot has come
 * @param fishAlive eggs or fish alive
 * @param temperature °C
 * @param totalAmmonia mg N/L
 * @param nitrite mg N/L
 * @param ph pH
 * @param oxygenShare dissolved oxygen as a share of saturation
 * @param chlorineMgPerL total residual chlorine left now
 * @param newestChlorine the reading behind it
 * @param chlorineSetAside one that waits for another
 * @param chlorideMgPerL by the newest reading, else the source water's, else 5
 * @param newestAlkalinity the newest alkalinity reading
 * @param routine water changes to be expected
 * @param deaths of the last days
 * @param newest when anything was last heard of the tank
 * @param firstFeedAt first feed noted, if any
 * @param calendar when its lot comes to what is yet to come; empty where there is no lot or it feeds
 */
public record TankBelief(
        TankFacts facts,
        Instant asOf,
        Development development,
        int fishAlive,
        TemperatureBelief temperature,
        SeriesBelief totalAmmonia,
        SeriesBelief nitrite,
        SeriesBelief ph,
        SeriesBelief oxygenShare,
        double chlorineMgPerL,
        Optional<Observation> newestChlorine,
        Optional<Observation> chlorineSetAside,
        double chlorideMgPerL,
        Optional<Observation> newestAlkalinity,
        WaterRoutine routine,
        RecentDeaths deaths,
        Optional<Instant> newest,
        Optional<Instant> firstFeedAt,
        Optional<LotCalendar> calendar) {

    /** The most likely dissolved oxygen now, mg/L. */
    public double oxygenMgPerLNow() {
        return oxygenShare.valueNow()
                * OxygenSaturation.mgPerL(temperature.medianC(), facts.elevationM().orElse(0));
    }
}
