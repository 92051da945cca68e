package org.tankrounds.places;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jooq.DSLContext;

/** What the pages of places read together. */
public record PlaceReads(
        SchoolRepository schools, ClassroomRepository classrooms, KitRepository kits, TankRepository tanks) {

    OptionalInt classroom(DSLContext tx, int chapterId, RoomChoice choice) {
        Optional<School> school = schools.list(tx, chapterId).stream()
                .filter(known -> known.code().equals(choice.school()))
                .findFirst();
        return school.isEmpty()
                ? OptionalInt.empty()
                : classrooms.find(tx, chapterId, school.get().schoolId(), choice.classroom());
    }

    /** The kit that most tanks use, offered for the next one; empty where the chapter has none. */
    String usualKit(DSLContext tx, int chapterId) {
        Map<Integer, Long> uses = tanks.listOfChapter(tx, chapterId).stream()
                .map(Tank::kitId)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        List<Kit> all = kits.list(tx, chapterId);
        return all.stream()
                .max(Comparator.comparing(kit -> uses.getOrDefault(kit.kitId(), 0L)))
                .map(Kit::name)
                .orElse("");
    }
}
