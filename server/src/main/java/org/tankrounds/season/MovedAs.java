package org.tankrounds.season;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.tankrounds.fish.Stage;

/**
 * How far what was moved had come.
 *
 * @param stage as somebody saw it, else as the tank that it left had come
 * @param thermalUnitsC degree-Celsius days since fertilisation, by the tank that it left; empty where that cannot tell
 */
public record MovedAs(Stage stage, OptionalDouble thermalUnitsC) {

    /** In forms and the database. */
    static String code(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    static Optional<Stage> stageOfCode(String code) {
        return Stream.of(Stage.values()).filter(stage -> code(stage).equals(code)).findFirst();
    }
}
