package org.tankrounds.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.pages.FormField.Option;

/** A room as a form names it: the school's code, a space, and what stands on the door. */
record RoomChoice(String school, String classroom) {

    static RoomChoice of(Tank tank) {
        return new RoomChoice(tank.room().schoolCode(), tank.classroom());
    }

    static Optional<RoomChoice> parse(String value) {
        int space = value.indexOf(' ');
        return space < 1
                ? Optional.empty()
                : Optional.of(new RoomChoice(value.substring(0, space), value.substring(space + 1)));
    }

    String value() {
        return school + " " + classroom;
    }

    static List<Option> options(List<School> schools) {
        List<Option> options = new ArrayList<>();
        for (School school : schools) {
            for (String room : school.classrooms()) {
                options.add(new Option(new RoomChoice(school.code(), room).value(), school.name() + ", " + room));
            }
        }
        return options;
    }
}
