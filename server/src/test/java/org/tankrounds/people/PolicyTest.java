package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.EnumSet;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tankrounds.people.Policy.Decision;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;

class PolicyTest {
    private static final Set<Role> PAGE_OF_COORDINATORS = EnumSet.of(Role.COORDINATOR);
    private static final Set<Role> PAGE_OF_ALL = EnumSet.of(Role.COORDINATOR, Role.MENTOR, Role.TEACHER);
    private static final Set<Role> PAGE_OF_CLASSES = Set.of(Role.AT_THE_TANK);
    private static final Set<Role> ROUNDS = EnumSet.of(Role.COORDINATOR, Role.MENTOR);
    private static final Set<Role> API_OF_TANKS = EnumSet.of(Role.TANK_TOKEN, Role.CHAPTER_TOKEN);
    private static final Set<Role> API_OF_CHAPTERS = EnumSet.of(Role.CHAPTER_TOKEN);

    @ParameterizedTest
    @CsvSource({
        // caller, open, everybody's page, page of all who sign in, classes' page, rounds, coordinators' page,
        // tank API, chapter API
        "ANYBODY,       ALLOW, ALLOW, SIGN_IN,   SIGN_IN,   SIGN_IN,   SIGN_IN,   UNAUTHORISED, UNAUTHORISED",
        "TEACHER,       ALLOW, ALLOW, ALLOW,     ALLOW,     NOT_FOUND, NOT_FOUND, UNAUTHORISED, UNAUTHORISED",
        "MENTOR,        ALLOW, ALLOW, ALLOW,     ALLOW,     ALLOW,     NOT_FOUND, UNAUTHORISED, UNAUTHORISED",
        "COORDINATOR,   ALLOW, ALLOW, ALLOW,     ALLOW,     ALLOW,     ALLOW,     UNAUTHORISED, UNAUTHORISED",
        "CLASS_CARD,    ALLOW, ALLOW, NOT_FOUND, ALLOW,     NOT_FOUND, NOT_FOUND, UNAUTHORISED, UNAUTHORISED",
        "TANK_TOKEN,    ALLOW, ALLOW, NOT_FOUND, NOT_FOUND, NOT_FOUND, NOT_FOUND, ALLOW,        FORBIDDEN",
        "CHAPTER_TOKEN, ALLOW, ALLOW, NOT_FOUND, NOT_FOUND, NOT_FOUND, NOT_FOUND, ALLOW,        ALLOW",
    })
    void whoMayCallWhat(Role role, Decision open, Decision everybody, Decision all, Decision classes, Decision rounds,
            Decision coordinators, Decision tanks, Decision chapters) {
        Caller caller = caller(role);

        assertThat(Policy.decide(caller, EnumSet.of(Role.OPEN))).isEqualTo(open);
        assertThat(Policy.decide(caller, EnumSet.of(Role.ANYBODY))).isEqualTo(everybody);
        assertThat(Policy.decide(caller, PAGE_OF_ALL)).isEqualTo(all);
        assertThat(Policy.decide(caller, PAGE_OF_CLASSES)).isEqualTo(classes);
        assertThat(Policy.decide(caller, ROUNDS)).isEqualTo(rounds);
        assertThat(Policy.decide(caller, PAGE_OF_COORDINATORS)).isEqualTo(coordinators);
        assertThat(Policy.decide(caller, API_OF_TANKS)).isEqualTo(tanks);
        assertThat(Policy.decide(caller, API_OF_CHAPTERS)).isEqualTo(chapters);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void aRouteThatNamesNobody_letsNobodyIn(Role role) {
        assertThat(Policy.decide(caller(role), EnumSet.noneOf(Role.class))).isNotEqualTo(Decision.ALLOW);
    }

    @Test
    void everyRoleIsInTheTable() {
        assertThat(Role.values()).as("a new role needs a row above").hasSize(8);
    }

    private static Caller caller(Role role) {
        return new Caller(role, 1, OptionalInt.empty(), OptionalInt.empty(), "", "", "", ZoneId.of("UTC"), "");
    }
}
