package org.tankrounds.readings;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.GivenReading.GivenValue;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.Digits;
import org.tankrounds.water.KnownTemperatures;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
import org.tankrounds.words.Saying;

/**
 * Says of a reading what is impossible, what is unlikely and what is fine, and converts it once into what the engine
 * takes in. Impossible is refused; unlikely is stored and counts for little until somebody says that it is right.
 */
final class Judge {
    static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
    static final Duration FURTHEST_AHEAD = Duration.ofDays(7);
    /** A clock that is this much ahead is wrong, and so is the time it gave. */
    static final Duration CLOCKS_MAY_DIFFER = Duration.ofMinutes(10);
    static final String TIME_DOUBTFUL = "time_doubtful";

    /**
     * What is known besides what was sent.
     *
     * @param lastTemperatureC of the tank's water at a time, as {@link KnownTemperatures} has it
     */
    record Known(Tank tank, Kit kit, Instant now, ToDoubleFunction<Instant> lastTemperatureC) {}

    private final Tank tank;
    private final Kit kit;
    private final Instant now;
    private final ToDoubleFunction<Instant> lastTemperatureC;
    private final Set<Analyte> confirmed;
    private final Faults faults;

    private final List<EnteredValue> values = new ArrayList<>();
    private final List<Measured> measured = new ArrayList<>();
    private final List<String> flags = new ArrayList<>();
    private final Set<Analyte> unlikely = EnumSet.noneOf(Analyte.class);
    private boolean timeDoubtful;
    private double waterTemperatureC = Double.NaN;

    private Judge(Known known, Set<Analyte> confirmed, Faults faults) {
        this.tank = known.tank();
        this.kit = known.kit();
        this.now = known.now();
        this.lastTemperatureC = known.lastTemperatureC();
        this.confirmed = confirmed;
        this.faults = faults;
    }

    /** @param confirmed analytes of which the writer was asked and said that the value is right */
    static JudgedReading judge(GivenReading given, Known known, Set<Analyte> confirmed, Faults faults) {
        return new Judge(known, confirmed, faults).reading(given);
    }

    /** Oxygen in % of saturation, and no temperature beside it at which to take it. */
    static boolean needsLastTemperature(GivenReading given) {
        return given.values().stream()
                .anyMatch(value -> value.analyte() == Analyte.DISSOLVED_OXYGEN && value.unit().equals("%"))
                && !Units.WATER_WITH_FISH_C.holds(temperatureOf(given));
    }

    private JudgedReading reading(GivenReading given) {
        given.measuredAt().ifPresent(this::time);
        clock(given.timeFlags());
        if (given.values().isEmpty() && given.note().isEmpty() && faults.none()) {
            faults.add("/values", Saying.of("readings.nothingInIt"));
        }
        Instant measuredAt = given.measuredAt().orElse(now);
        waterTemperatureC = faults.none() && needsLastTemperature(given)
                ? lastTemperatureC.applyAsDouble(measuredAt) : temperatureOf(given);
        given.values().forEach(this::value);
        return new JudgedReading(measuredAt, given.by(), given.note(), List.copyOf(values),
                List.copyOf(measured), List.copyOf(flags), Set.copyOf(unlikely));
    }

    private void time(Instant measuredAt) {
        if (!isPossible(measuredAt, now)) {
            faults.add("/measuredAt", Saying.of("readings.timeOutside"));
        } else if (measuredAt.isAfter(now.plus(CLOCKS_MAY_DIFFER))) {
            timeDoubtful = true;
            flags.add(TIME_DOUBTFUL);
        }
    }

    private void clock(List<String> timeFlags) {
        timeDoubtful |= timeFlags.contains(TIME_DOUBTFUL);
        timeFlags.stream().filter(flag -> !flags.contains(flag)).forEach(flags::add);
    }

    static boolean isPossible(Instant measuredAt, Instant now) {
        return !measuredAt.isBefore(EARLIEST) && !measuredAt.isAfter(now.plus(FURTHEST_AHEAD));
    }

    private static double temperatureOf(GivenReading given) {
        for (GivenValue value : given.values()) {
            if (value.analyte() == Analyte.TEMPERATURE && value.as().isEmpty()) {
                Optional<UnitForm> form = Analyte.TEMPERATURE.form(value.unit(), "");
                return form.isEmpty() ? Double.NaN : Digits.kept(
                        Units.toCanonical(Analyte.TEMPERATURE, form.get(), value.value().doubleValue(), 0));
            }
        }
        return Double.NaN;
    }

    private void value(GivenValue given) {
        Optional<UnitForm> form = form(given);
        if (form.isEmpty()) {
            return;
        }
        Analyte analyte = given.analyte();
        double canonical = canonical(analyte, form.get(), given.value().doubleValue());
        if (!analyte.possible().holds(canonical)) {
            faults.add(given.at() + "/value", Wording.possible(analyte, form.get(), analyte.possible(),
                    limit -> fromCanonical(analyte, form.get(), limit), given.value()));
            return;
        }
        if (analyte.isWholeNumber() && given.value().stripTrailingZeros().scale() > 0) {
            faults.add(given.at() + "/value", Saying.of("readings.wholeNumber", Wording.name(analyte)));
            return;
        }
        if (given.below() && !analyte.isDissolved()) {
            faults.add(given.at() + "/below", Saying.of("readings.cannotBeBelow", Wording.name(analyte)));
            return;
        }
        take(given, form.get(), canonical);
    }

    private Optional<UnitForm> form(GivenValue given) {
        Analyte analyte = given.analyte();
        Optional<UnitForm> written = analyte.form(given.unit(), given.as().orElse(""));
        if (written.isPresent()) {
            return written;
        }
        boolean unitKnown = analyte.accepted().stream().anyMatch(form -> form.unit().equals(given.unit()));
        faults.add(given.at() + (unitKnown ? "/as" : "/unit"), Wording.accepted(analyte));
        return Optional.empty();
    }

    private void take(GivenValue given, UnitForm form, double canonical) {
        Analyte analyte = given.analyte();
        double step = step(given, form, canonical);
        if (step > analyte.possible().max() - analyte.possible().min()) {
            faults.add(given.at() + "/step", Saying.of("readings.stepTooWide", given.step().orElseThrow(),
                    Wording.name(analyte)));
            return;
        }
        boolean doubtful = timeDoubtful;
        if (!analyte.isLikely(canonical)) {
            boolean kept = confirmed.contains(analyte);
            flags.add((kept ? "confirmed:" : "unlikely:") + analyte.code());
            doubtful |= !kept;
            if (!kept) {
                unlikely.add(analyte);
            }
        }
        int bits = (notDetected(given, form) ? ObservationRepository.NOT_DETECTED : 0)
                | (doubtful ? ObservationRepository.DOUBTFUL : 0);
        measured.add(new Measured(analyte, (float) canonical, (float) (step / 2), (short) bits));
        values.add(new EnteredValue(analyte, given.value(), form, given.step(), given.below()));
    }

    /** In the canonical unit; 0 where neither the writer nor the kit says it. */
    private double step(GivenValue given, UnitForm form, double canonical) {
        Analyte analyte = given.analyte();
        if (given.step().isPresent()) {
            return Units.stepToCanonical(analyte, form, given.step().get().doubleValue(), waterTemperatureC,
                    tank.elevationM().orElse(0));
        }
        return card(given).map(card -> {
            double onCard = fromCanonical(analyte, card.form(), canonical);
            return Units.stepToCanonical(analyte, card.form(), card.stepAt(onCard), waterTemperatureC,
                    tank.elevationM().orElse(0));
        }).orElse(0.0);
    }

    /** The colour card that it was read with, unless it was another method. */
    private Optional<KitScale> card(GivenValue given) {
        return given.byCard() ? kit.scale(given.analyte()) : Optional.empty();
    }

    private boolean notDetected(GivenValue given, UnitForm form) {
        Analyte analyte = given.analyte();
        if (given.below()) {
            return true;
        }
        if (!analyte.isUndetectedAtZero()) {
            return false;
        }
        return given.value().signum() == 0 || given.step().isEmpty() && card(given)
                .filter(card -> card.form().equals(form))
                .map(card -> card.isLowest(given.value().doubleValue()))
                .orElse(false);
    }

    private double canonical(Analyte analyte, UnitForm form, double value) {
        return Units.toCanonical(analyte, form, value, waterTemperatureC, tank.elevationM().orElse(0));
    }

    private double fromCanonical(Analyte analyte, UnitForm form, double canonical) {
        return Units.fromCanonical(analyte, form, canonical, waterTemperatureC, tank.elevationM().orElse(0));
    }

    /** Whether a value as written is what classroom tanks show, for asking "did you mean". */
    static boolean likely(Analyte analyte, UnitForm form, BigDecimal value) {
        return analyte.isLikely(Units.toCanonical(analyte, form, value.doubleValue(), Double.NaN));
    }
}
