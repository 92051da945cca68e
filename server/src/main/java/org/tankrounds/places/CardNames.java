package org.tankrounds.places;

import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.words.Saying;

/** What a card and its unit are called on a page. */
final class CardNames {
    private CardNames() {}

    static Saying of(Analyte analyte) {
        return Saying.of(analyte == Analyte.TOTAL_AMMONIA
                ? "places.kit.totalAmmonia" : "readings.name." + analyte.code());
    }

    static Saying counts(UnitForm form) {
        return switch (form.unit()) {
            case "[dH]" -> Saying.of("places.kit.germanDegrees");
            case "[pH]" -> Saying.asIs("pH");
            case "%" -> Saying.of("places.kit.saturation");
            default -> form.as().isEmpty()
                    ? Saying.asIs(form.unit()) : Saying.of("readings.unitAs", form.unit(), form.as());
        };
    }
}
