package org.tankrounds.belief;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.tankrounds.fish.SeenStages;
import org.tankrounds.water.Digits;

/**
 * What is known of a tank besides its readings.
 *
 * @param tank the tank's code
 * @param volumeL water volume, L
 * @param eggs eggs received
 * @param eggsReceivedAt when
 * @param thermalUnitsC degree-Celsius days that the eggs had when received
 * @param sourceAlkalinityMgPerL alkalinity of the source water, mg/L as CaCO3
 * @param chlorideMgPerL chloride of the source water, mg/L
 * @param chillerSetPointC what the chiller is set to, °C
 * @param elevationM height above the sea, m
 * @param seen when the class saw its lot come to each milestone; it wins over what is computed
 * @param zone where the school's days and weekends are
 */
public record TankFacts(
        String tank,
        OptionalDouble volumeL,
        OptionalInt eggs,
        Optional<Instant> eggsReceivedAt,
        OptionalDouble thermalUnitsC,
        OptionalDouble sourceAlkalinityMgPerL,
        OptionalDouble chlorideMgPerL,
        OptionalDouble chillerSetPointC,
        OptionalDouble elevationM,
        SeenStages seen,
        ZoneId zone) {

    /** Taken for the volume where nobody has said it (common practice, no source). */
    public static final double USUAL_VOLUME_L = 190;
    /** A filter is started weeks before the eggs come; what was read then belongs to the season. */
    private static final Duration BEFORE_EGGS = Duration.ofDays(60);
    private static final Duration WITHOUT_EGGS = Duration.ofDays(300);

    public TankFacts {
        Objects.requireNonNull(tank, "tank");
        Objects.requireNonNull(volumeL, "volumeL");
        Objects.requireNonNull(eggs, "eggs");
        Objects.requireNonNull(eggsReceivedAt, "eggsReceivedAt");
        Objects.requireNonNull(thermalUnitsC, "thermalUnitsC");
        Objects.requireNonNull(sourceAlkalinityMgPerL, "sourceAlkalinityMgPerL");
        Objects.requireNonNull(chlorideMgPerL, "chlorideMgPerL");
        Objects.requireNonNull(chillerSetPointC, "chillerSetPointC");
        Objects.requireNonNull(elevationM, "elevationM");
        Objects.requireNonNull(seen, "seen");
        Objects.requireNonNull(zone, "zone");
    }

    /** What was read earlier was last year's fish in last year's filter, and does not count at {@code asOf}. */
    public Instant seasonFrom(Instant asOf) {
        return eggsReceivedAt.filter(received -> !received.isAfter(asOf))
                .map(received -> received.minus(BEFORE_EGGS)).orElse(asOf.minus(WITHOUT_EGGS));
    }

    /** When the class saw the fish feed first. */
    public Optional<Instant> firstFeedingAt() {
        return seen.firstFeedingAt();
    }

    /** A tank of which only the code is known. */
    public static Builder of(String tank) {
        return new Builder(tank);
    }

    /** Gathers the facts that are known, with the digits that are kept; {@code null} and leaving out mean unknown. */
    public static final class Builder {

        private final String tank;
        private OptionalDouble volumeL = OptionalDouble.empty();
        private OptionalInt eggs = OptionalInt.empty();
        private Optional<Instant> eggsReceivedAt = Optional.empty();
        private OptionalDouble thermalUnitsC = OptionalDouble.empty();
        private OptionalDouble sourceAlkalinityMgPerL = OptionalDouble.empty();
        private OptionalDouble chlorideMgPerL = OptionalDouble.empty();
        private OptionalDouble chillerSetPointC = OptionalDouble.empty();
        private OptionalDouble elevationM = OptionalDouble.empty();
        private SeenStages seen = SeenStages.NONE;
        private ZoneId zone = ZoneOffset.UTC;

        private Builder(String tank) {
            this.tank = tank;
        }

        public Builder volumeL(Number value) {
            volumeL = known(value);
            return this;
        }

        public Builder eggs(Integer value) {
            eggs = value == null ? OptionalInt.empty() : OptionalInt.of(value);
            return this;
        }

        public Builder eggsReceivedAt(Instant value) {
            eggsReceivedAt = Optional.ofNullable(value);
            return this;
        }

        public Builder thermalUnitsC(Number value) {
            thermalUnitsC = known(value);
            return this;
        }

        public Builder sourceAlkalinityMgPerL(Number value) {
            sourceAlkalinityMgPerL = known(value);
            return this;
        }

        public Builder chlorideMgPerL(Number value) {
            chlorideMgPerL = known(value);
            return this;
        }

        public Builder chillerSetPointC(Number value) {
            chillerSetPointC = known(value);
            return this;
        }

        public Builder elevationM(Number value) {
            elevationM = known(value);
            return this;
        }

        public Builder firstFeedingAt(Instant value) {
            seen = seen.withFirstFeedingAt(Optional.ofNullable(value));
            return this;
        }

        public Builder seen(SeenStages value) {
            seen = value;
            return this;
        }

        public Builder zone(ZoneId value) {
            zone = value == null ? ZoneOffset.UTC : value;
            return this;
        }

        public TankFacts build() {
            return new TankFacts(tank, volumeL, eggs, eggsReceivedAt, thermalUnitsC,
                    sourceAlkalinityMgPerL, chlorideMgPerL, chillerSetPointC, elevationM,
                    seen, zone);
        }

        private static OptionalDouble known(Number value) {
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(Digits.kept(value.doubleValue()));
        }
    }
}
