package org.tankrounds.demo;

import java.time.LocalTime;
import java.util.List;
import org.tankrounds.demo.DemoTank.Eggs;
import org.tankrounds.demo.DemoTank.Equipment;
import org.tankrounds.demo.DemoTank.Routine;
import org.tankrounds.demo.DemoTank.Water;

/**
 * Two chapters in the middle of a season, all of it invented: eight tanks in six schools with a trouble of every kind,
 * and three in another chapter that must never be seen from the first. Names stand for nothing that exists.
 */
final class DemoScenario {
    private static final String FAHRENHEIT = "[degF]";
    private static final String CELSIUS = "Cel";

    private DemoScenario() {}

    static List<DemoChapter> chapters() {
        return List.of(hollinthrup(), copperlinn());
    }

    private static DemoChapter hollinthrup() {
        return new DemoChapter("hollinthrup", "Hollinthrup chapter",
                List.of(
                        new DemoPerson("Ilva Marten", "coordinator@hollinthrup.example", "coordinator"),
                        new DemoPerson("Oskar Thwell", "mentor@hollinthrup.example", "mentor"),
                        new DemoPerson("Rena Dovely", "teacher@hollinthrup.example", "teacher"),
                        new DemoPerson("Joss Fennick", "teacher2@hollinthrup.example", "teacher"),
                        new DemoPerson("Mira Ashgill", "teacher3@hollinthrup.example", "teacher")),
                List.of(
                        new DemoSchool("Brindleford School", "Spoonquill Lane, behind the gym", 210,
                                List.of(chillerStopped(), softWater())),
                        new DemoSchool("Quillmoss School", "East entrance, ring twice", 185,
                                List.of(overFed(), healthyWithProbe())),
                        new DemoSchool("Otterhythe School", "Otterquill Street, library wing", 40,
                                List.of(unripeFilter())),
                        new DemoSchool("Saddlewick School", "Top of the hill, side door", 320,
                                List.of(silentClass())),
                        new DemoSchool("Larchquill School", "Old Pondquill Road", 150,
                                List.of(healthySacFry())),
                        new DemoSchool("Ambleroot School", "Second gate, blue door", 95,
                                List.of(deathsStarting()))));
    }

    private static DemoChapter copperlinn() {
        return new DemoChapter("copperlinn", "Copperlinn chapter",
                List.of(
                        new DemoPerson("Tamsel Orrin", "coordinator@copperlinn.example", "coordinator"),
                        new DemoPerson("Greta Wyndel", "mentor@copperlinn.example", "mentor"),
                        new DemoPerson("Pell Hadrow", "teacher@copperlinn.example", "teacher"),
                        new DemoPerson("Yara Snellquill", "teacher2@copperlinn.example", "teacher")),
                List.of(
                        new DemoSchool("Sedgewhistle School", "By the water tower", 260,
                                List.of(lowChloride(), healthyOfTheSecond())),
                        new DemoSchool("Dapplethorpe School", "Main hall, ask at the desk", 130,
                                List.of(coolOfTheSecond()))));
    }

    private static DemoTank chillerStopped() {
        return new DemoTank("brindleford-12", "Room 12", 0,
                new Equipment(208, 10.5, "canister", FAHRENHEIT, true, false),
                new Water(95, 28, "chlorine", 3.2),
                new Eggs(150, 58, 225),
                new Routine("period 3", LocalTime.of(10, 5), 0.9, 0.2, 7),
                Story.ripe().chillerStoppedHoursAgo(22.5)
                        .notesNewestFirst("Water feels warm, chiller hums but its hose is not cold"));
    }

    private static DemoTank softWater() {
        return new DemoTank("brindleford-9", "Room 9", 1,
                new Equipment(110, 11, "hang_on", FAHRENHEIT, false, false),
                new Water(28, 14, "none", 4.2),
                new Eggs(60, 57, 230),
                new Routine("period 1", LocalTime.of(8, 10), 0.85, 0.25, 7),
                Story.ripe().changesStoppedDaysAgo(10)
                        .notesNewestFirst("", "No water change again, the hose is broken"));
    }

    private static DemoTank overFed() {
        return new DemoTank("quillmoss-lab", "Science lab", 2,
                new Equipment(151, 11.1, "hang_on", FAHRENHEIT, false, false),
                new Water(150, 24, "chlorine", 3.6),
                new Eggs(140, 60, 230),
                new Routine("period 3", LocalTime.of(14, 5), 0.8, 0.2, 9),
                Story.ripe().feeding(9, 2).feeding(4, 3.5).feeding(2, 5.5)
                        .notesNewestFirst("Food left on the bottom", "", "They are always hungry"));
    }

    private static DemoTank healthyWithProbe() {
        return new DemoTank("quillmoss-hall", "Hallway", 2,
                new Equipment(284, 10, "canister", CELSIUS, true, true),
                new Water(120, 30, "none", 3),
                new Eggs(160, 62, 235),
                new Routine("tank team", LocalTime.of(12, 20), 0.8, 0.2, 7),
                Story.ripe());
    }

    private static DemoTank unripeFilter() {
        return new DemoTank("otterhythe-library", "Library", 0,
                new Equipment(208, 11, "sponge", FAHRENHEIT, false, false),
                new Water(70, 20, "chlorine", 4),
                new Eggs(150, 49, 70),
                new Routine("library club", LocalTime.of(13, 40), 0.85, 0.2, 8),
                Story.filter(0.05, 0.05)
                        .notesNewestFirst("", "Water a little cloudy"));
    }

    private static DemoTank silentClass() {
        return new DemoTank("saddlewick-3", "Room 3", 1,
                new Equipment(208, 10.5, "hang_on", FAHRENHEIT, false, false),
                new Water(85, 22, "none", 3.2),
                new Eggs(150, 58, 220),
                new Routine("period 5", LocalTime.of(13, 15), 0.7, 0.2, 10),
                Story.ripe().silentForDays(6));
    }

    private static DemoTank healthySacFry() {
        return new DemoTank("larchquill-21", "Room 21", 1,
                new Equipment(208, 7.2, "canister", FAHRENHEIT, false, false),
                new Water(110, 26, "none", 2.8),
                new Eggs(180, 50, 45),
                new Routine("period 2", LocalTime.of(8, 2), 0.9, 0.15, 10),
                Story.ripe());
    }

    private static DemoTank deathsStarting() {
        return new DemoTank("ambleroot-5", "Room 5", 2,
                new Equipment(151, 11.5, "sponge", FAHRENHEIT, false, true),
                new Water(80, 20, "chloramine", 3.2),
                new Eggs(120, 56, 225),
                new Routine("period 4", LocalTime.of(11, 30), 0.85, 0.2, 8),
                Story.ripe().deathsNewestFirst(4, 2, 1, 0, 1)
                        .notesNewestFirst("Some swim near the surface", "Two lay on the bottom"));
    }

    private static DemoTank lowChloride() {
        return new DemoTank("sedgewhistle-science", "Science corner", 0,
                new Equipment(190, 11, "sponge", FAHRENHEIT, false, false),
                new Water(60, 3, "none", 3.5),
                new Eggs(130, 52, 90),
                new Routine("period 2", LocalTime.of(9, 50), 0.85, 0.2, 8),
                Story.filter(0.2, 0.2)
                        .notesNewestFirst("Gills look busy"));
    }

    private static DemoTank healthyOfTheSecond() {
        return new DemoTank("sedgewhistle-foyer", "Foyer", 0,
                new Equipment(240, 10, "canister", CELSIUS, false, false),
                new Water(100, 35, "chlorine", 3),
                new Eggs(140, 61, 230),
                new Routine("lunch club", LocalTime.of(12, 40), 0.8, 0.2, 7),
                Story.ripe().slipDaysAgo(11));
    }

    private static DemoTank coolOfTheSecond() {
        return new DemoTank("dapplethorpe-6", "Room 6", 1,
                new Equipment(151, 7.5, "hang_on", FAHRENHEIT, false, false),
                new Water(90, 18, "none", 3),
                new Eggs(110, 49, 60),
                new Routine("period 1", LocalTime.of(8, 20), 0.9, 0.15, 9),
                Story.ripe());
    }
}
