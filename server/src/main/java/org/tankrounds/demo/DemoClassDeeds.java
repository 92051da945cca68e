package org.tankrounds.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import org.jooq.DSLContext;
import org.tankrounds.behaviour.LookRepository;
import org.tankrounds.behaviour.Seen;
import org.tankrounds.breaks.BreakRepository;
import org.tankrounds.breaks.SchoolBreak;
import org.tankrounds.demo.DemoPlaces.Written;
import org.tankrounds.demo.DemoPlaces.WrittenChapter;
import org.tankrounds.people.PersonRepository;
import org.tankrounds.season.FishSample;
import org.tankrounds.season.FishSampleRepository;
import org.tankrounds.tasks.TaskRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.Role;

/**
 * What the invented classes saw of their fish and measured of them, what they were asked to do, and when they are away.
 */
final class DemoClassDeeds {
    private static final Map<String, List<Seen>> SEEN = Map.of(
            "ambleroot-5", List.of(Seen.SURFACE, Seen.FAST, Seen.REFUSING),
            "quillmoss-hall", List.of(Seen.CALM, Seen.SPREAD, Seen.EVEN, Seen.EAGER),
            "sedgewhistle-science", List.of(Seen.CALM, Seen.FAST));
    private static final Map<String, FishSample> MEASURED = Map.of(
            "quillmoss-hall", sample(12, 33, 4.8),
            "sedgewhistle-science", sample(10, 28, 2.4));
    private static final Map<String, String> ASKED = Map.of(
            "otterhythe-library", "Read ammonia and nitrite every school day until both are at the lowest colour.",
            "sedgewhistle-science", "Rinse the sponge in tank water on Friday, never under the tap.");

    private static final Set<String> AWAY = Set.of("larchquill-21", "sedgewhistle-science");

    private final PersonRepository people;
    private final LookRepository looks = new LookRepository();
    private final FishSampleRepository samples = new FishSampleRepository();
    private final TaskRepository tasks = new TaskRepository();
    private final BreakRepository breaks = new BreakRepository();

    DemoClassDeeds(PersonRepository people) {
        this.people = people;
    }

    /** @return of how many tanks there is something to tell */
    long write(DSLContext tx, WrittenChapter chapter, Instant now) {
        Caller coordinator = coordinator(tx, chapter);
        for (Written tank : chapter.tanks()) {
            String key = tank.life().tank().key();
            if (SEEN.containsKey(key)) {
                looks.add(tx, coordinator, tank.tankId(), UUID.randomUUID(), SEEN.get(key),
                        now.minus(Duration.ofHours(18)));
            }
            if (MEASURED.containsKey(key)) {
                samples.add(tx, coordinator, tank.tankId(), UUID.randomUUID(),
                        MEASURED.get(key).at(now.minus(Duration.ofDays(6))));
            }
            if (ASKED.containsKey(key)) {
                tasks.ask(tx, coordinator, tank.tankId(), ASKED.get(key), now.minus(Duration.ofHours(20)));
            }
            if (AWAY.contains(key)) {
                breaks.add(tx, coordinator, tank.tankId(),
                        longWeekend(now.atZone(coordinator.zone()).toLocalDate().plusDays(3)), now);
            }
        }
        return chapter.tanks().stream().map(tank -> tank.life().tank().key()).filter(key -> SEEN.containsKey(key)
                || MEASURED.containsKey(key) || ASKED.containsKey(key)).count();
    }

    /** On whose behalf the chapter's deeds are done. */
    Caller coordinator(DSLContext tx, WrittenChapter chapter) {
        int chapterId = chapter.chapter().chapterId();
        int personId = people.list(tx, chapterId).stream().filter(person -> person.role() == Role.COORDINATOR)
                .findFirst().orElseThrow().personId();
        return new Caller(Role.COORDINATOR, chapterId, OptionalInt.of(personId), OptionalInt.empty(), "", "demo",
                chapter.chapter().name(), chapter.chapter().zone(), "");
    }

    /** One of its days is still to be taken. */
    private static SchoolBreak longWeekend(LocalDate first) {
        return new SchoolBreak(0, "Long weekend", first, first.plusDays(3), Map.of(
                first, "class teacher", first.plusDays(1), "custodian", first.plusDays(3), "custodian"));
    }

    private static FishSample sample(int fish, double meanLengthMm, double totalWeightG) {
        return new FishSample(0, Instant.EPOCH, fish, meanLengthMm, OptionalDouble.of(totalWeightG));
    }
}
