package org.tankrounds.readings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tankrounds.pages.LogPage.Hidden;
import org.tankrounds.places.Kit;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;

/**
 * With which kit and which scale of the thermometer a form opened, as it carries it itself: only what its writer chose
 * otherwise is a habit to be remembered. A form that was left open, or waited on a device, must not undo what a
 * coordinator changed meanwhile. Forms before version 4 do not say it; nothing is remembered of them.
 */
final class OpenedWith {
    static final String KIT = "opened_kit";
    static final String SCALE = "opened_unit";
    private static final String CHOSEN_SCALE = Analyte.TEMPERATURE.code() + LogForm.UNIT;
    private static final Set<String> SCALES = Set.of("Cel", "[degF]");

    /** What takes the place of what the form opened with. */
    record Change(String from, String to) {}

    private OpenedWith() {}

    static Map<String, String> fields(Tank tank, Kit kit) {
        return Map.of(KIT, kit.name(), SCALE, tank.thermometerUnit());
    }

    /** The same through every showing: what the form opened with, not what was chosen since. */
    static List<Hidden> hidden(LogForm form) {
        return List.of(new Hidden(KIT, form.text(KIT)), new Hidden(SCALE, form.text(SCALE)));
    }

    static Optional<Change> otherKit(LogForm form) {
        return change(form.text(KIT), form.text(LogForm.KIT));
    }

    /** Nobody tells of a thermometer who did not read it. */
    static Optional<Change> otherScale(LogForm form) {
        return form.text(Analyte.TEMPERATURE).isBlank() ? Optional.empty()
                : change(form.text(SCALE), form.text(CHOSEN_SCALE)).filter(change -> SCALES.contains(change.to()));
    }

    private static Optional<Change> change(String opened, String chosen) {
        return opened.isBlank() || chosen.isBlank() || opened.equals(chosen) ? Optional.empty()
                : Optional.of(new Change(opened, chosen));
    }
}
