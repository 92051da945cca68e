package org.tankrounds.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tankrounds.fish.DatedTemperature;
import org.tankrounds.water.Range;

/**
 * Temperature readings set right: where a number makes no sense in its own unit but fits the tank in the other
 * thermometer scale, or with the decimal point moved, it is taken as that. More than any classroom's water is warm can
 * only be degrees Fahrenheit, and counts as if it had been noted so.
 */
final class TemperatureReadings {

    private static final int RECENT = 5;
    private static final double FAR_C = 8;
    private static final double SAME_C = 4;
    private static final double SLIP_C = 2;
    /** So many of the last few in degrees Fahrenheit are the class's thermometer, no mix-up (the project's choice). */
    private static final int HABIT = 4;
    private static final int LAST_FEW = 6;
    private static final double ONE_LOOK_C = 1.5;
    private static final double SAME_LEVEL_C = 1.5;
    /** From ice on a thermometer that is a degree off, to more than any classroom is warm. */
    private static final Range CLASSROOM_WATER_C = new Range(-1, 35);
    private static final Range LIQUID_WITH_FISH_C = new Range(0, 30);

    private TemperatureReadings() {
    }

    /** The readings in the same order, mixed-up ones replaced, and marked doubtful unless that is the class's habit. */
    static List<Observation> setRight(List<Observation> readings, double usualC, SecondLooks secondLooks) {
        List<Observation> right = new ArrayList<>(readings.size());
        double[] recent = {usualC, usualC, usualC, usualC, usualC};
        int seen = 0;
        boolean[] inFahrenheit = new boolean[LAST_FEW];
        for (int i = 0; i < readings.size(); i++) {
            double expected = median(recent);
            Observation reading = readings.get(i);
            boolean habit = isHabit(inFahrenheit) && isLiquidInFahrenheit(reading);
            Observation inOtherScale = habit ? fromFahrenheit(reading, false) : setRight(reading, expected);
            inFahrenheit[i % LAST_FEW] = isFromFahrenheit(reading, inOtherScale);
            Observation taken = (inOtherScale == reading || isBorneOut(readings, i, secondLooks) ? reading
                    : inOtherScale).asFarAsCredible();
            right.add(taken);
            if (Math.abs(taken.value() - expected) < 2 * FAR_C) {
                recent[seen++ % RECENT] = taken.value();
            }
        }
        return right;
    }

    /** One reading of each look, the newest, where those within minutes of it say about the same. */
    static List<Observation> looks(List<Observation> right) {
        List<Observation> looks = new ArrayList<>(right.size());
        for (int i = right.size() - 1; i >= 0; i--) {
            Observation reading = right.get(i);
            Observation later = looks.isEmpty() ? null : looks.get(looks.size() - 1);
            if (later == null || !later.isSameLookAs(reading)
                    || Math.abs(later.value() - reading.value()) > ONE_LOOK_C) {
                looks.add(reading);
            }
        }
        Collections.reverse(looks);
        return looks;
    }

    /** The course of the temperature for counting thermal units: lone spikes left out. */
    static List<DatedTemperature> trace(List<Observation> right) {
        List<DatedTemperature> trace = new ArrayList<>(right.size());
        for (int i = 0; i < right.size(); i++) {
            double value = right.get(i).value();
            boolean spikes = i > 0 && Math.abs(value - right.get(i - 1).value()) > SAME_C
                    && (i + 1 == right.size() || Math.abs(value - right.get(i + 1).value()) > SAME_C);
            boolean oddFirst = i == 0 && right.size() > 1
                    && Math.abs(value - right.get(1).value()) > FAR_C;
            if (!spikes && !oddFirst) {
                trace.add(new DatedTemperature(right.get(i).at(), value));
            }
        }
        return trace;
    }

    /** Of what a tank can show, two looks in agreement are right, however odd. */
    private static boolean isBorneOut(List<Observation> readings, int i, SecondLooks secondLooks) {
        Observation reading = readings.get(i);
        if (!reading.isCredible()) {
            return false;
        }
        for (int j = i - 1; j >= 0 && isSameLevel(readings.get(j), reading); j--) {
            if (secondLooks.areTwo(readings.get(j), reading)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isSameLevel(Observation one, Observation other) {
        return Math.abs(one.value() - other.value()) <= SAME_LEVEL_C;
    }

    private static Observation setRight(Observation reading, double expectedC) {
        double read = reading.value();
        if (isNear(read, expectedC)) {
            return reading;
        }
        double fromFahrenheit = (read - 32) / 1.8;
        double fromCelsius = read * 1.8 + 32;
        if (Math.abs(fromFahrenheit - expectedC) < SAME_C) {
            return fromFahrenheit(reading, read <= CLASSROOM_WATER_C.max());
        }
        if (Math.abs(fromCelsius - expectedC) < SAME_C) {
            return taken(reading, fromCelsius, reading.halfStep() * 1.8);
        }
        if (Math.abs(read / 10 - expectedC) < SLIP_C) {
            return taken(reading, read / 10, reading.halfStep());
        }
        if (Math.abs(read * 10 - expectedC) < SLIP_C) {
            return taken(reading, read * 10, reading.halfStep());
        }
        return inOnlyScale(reading, fromFahrenheit, fromCelsius);
    }

    /** What no water shows in its own scale can only be meant in the other, whatever was expected. */
    private static Observation inOnlyScale(Observation reading, double fromFahrenheit, double fromCelsius) {
        if (reading.value() > CLASSROOM_WATER_C.max() && LIQUID_WITH_FISH_C.holds(fromFahrenheit)) {
            return fromFahrenheit(reading, false);
        }
        if (reading.value() < CLASSROOM_WATER_C.min() && LIQUID_WITH_FISH_C.holds(fromCelsius)) {
            return taken(reading, fromCelsius, reading.halfStep() * 1.8);
        }
        return reading;
    }

    private static boolean isHabit(boolean[] inFahrenheit) {
        int count = 0;
        for (boolean one : inFahrenheit) {
            count += one ? 1 : 0;
        }
        return count >= HABIT;
    }

    /** From 32 to 86: in degrees Celsius no fish lives there. */
    private static boolean isLiquidInFahrenheit(Observation reading) {
        return LIQUID_WITH_FISH_C.holds(fromFahrenheit(reading, false).value());
    }

    private static boolean isNear(double readC, double expectedC) {
        return CLASSROOM_WATER_C.holds(readC) && Math.abs(readC - expectedC) < FAR_C;
    }

    private static boolean isFromFahrenheit(Observation reading, Observation taken) {
        return taken.value() != reading.value() && taken.value() == fromFahrenheit(reading, true).value();
    }

    private static Observation fromFahrenheit(Observation reading, boolean doubtful) {
        return new Observation(reading.at(), reading.analyte(), (reading.value() - 32) / 1.8, reading.halfStep() / 1.8,
                false, doubtful);
    }

    private static Observation taken(Observation reading, double valueC, double halfStepC) {
        return new Observation(reading.at(), reading.analyte(), valueC, halfStepC, false, true);
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
