package org.tankrounds.lab;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.tankrounds.advice.Act;
import org.tankrounds.belief.Observation;
import org.tankrounds.tankmodel.TankState;

/**
 * What is too rare to wait for, done to a tank just before its advice is asked for, and read there. The spans are
 * free choices: what an act is meant for, mild and bad.
 */
enum Staged {

    UNTREATED_WATER(EnumSet.of(Act.Kind.THIOSULFATE)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.changeUntreated(luck);
        }

        @Override
        List<Observation> read(SchoolClass reader, Instant at) {
            return List.of(reader.testChlorine(at));
        }
    },
    AIR_CLOGGED(EnumSet.of(Act.Kind.MORE_AIR)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.clogAir(luck.between(0.2, 0.6));
        }
    },
    AIR_CLOGGED_WITH_AMMONIA(EnumSet.of(Act.Kind.MORE_AIR)) {
        @Override
        void on(TankWater water, Luck luck) {
            AIR_CLOGGED.on(water, luck);
            TankState held = water.state();
            water.dissolve(luck.between(0.5, 4.0), held.nitriteMgPerL(), held.alkalinityMgPerL());
        }
    },
    ALKALINITY_USED_UP(EnumSet.of(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.dissolve(luck.between(0, 0.2), luck.between(0, 0.04), luck.between(2.0, 15.0));
        }
    },
    ALKALINITY_USED_UP_WITH_NITROGEN(EnumSet.of(Act.Kind.BICARBONATE, Act.Kind.WATER_CHANGE)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.dissolve(luck.between(0.2, 1.0), luck.between(0.02, 0.2), luck.between(2.0, 15.0));
        }
    },
    NITRITE_WITH_LITTLE_ALKALINITY(EnumSet.of(Act.Kind.SALT, Act.Kind.WATER_CHANGE)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.dissolve(luck.between(0.1, 1.0), luck.between(0.05, 0.3), luck.between(5.0, 30.0));
        }
    },
    SOUR_WITH_MUCH_AMMONIA(EnumSet.of(Act.Kind.LEAVE_WATER, Act.Kind.WATER_CHANGE)) {
        @Override
        void on(TankWater water, Luck luck) {
            water.dissolve(luck.between(4.5, 10.0), water.state().nitriteMgPerL(), luck.between(1.0, 6.0));
        }
    };

    private final Set<Act.Kind> tried;

    Staged(Set<Act.Kind> tried) {
        this.tried = tried;
    }

    /** Whether it is staged to try that: what is called for, and what may do harm there. */
    boolean tries(Act act) {
        return tried.contains(act.kind());
    }

    abstract void on(TankWater water, Luck luck);

    List<Observation> read(SchoolClass reader, Instant at) {
        return reader.testAll(at);
    }

    /** In turn, so that every tank and every season of the year comes to each. */
    static Staged next(int number) {
        return values()[number % values().length];
    }

    String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
