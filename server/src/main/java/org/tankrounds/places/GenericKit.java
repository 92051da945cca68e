package org.tankrounds.places;

import java.util.List;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** A profile of our own that no maker sells: what a chapter starts from until it types its own cards in. */
final class GenericKit {
    static final List<KitScale> SCALES = List.of(
            new KitScale(Analyte.PH, UnitForm.of("[pH]"), List.of(6.0, 6.3, 6.6, 6.9, 7.2, 7.5, 7.8, 8.1, 8.4)),
            new KitScale(Analyte.TOTAL_AMMONIA, new UnitForm("mg/L", "N"), List.of(0.0, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0)),
            new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "NO2"), List.of(0.0, 0.1, 0.3, 0.6, 1.0, 3.0, 6.0)),
            new KitScale(Analyte.NITRATE, new UnitForm("mg/L", "NO3"), List.of(0.0, 5.0, 10.0, 25.0, 50.0, 100.0)));

    private GenericKit() {}
}
