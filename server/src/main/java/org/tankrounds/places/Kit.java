package org.tankrounds.places;

import java.util.List;
import java.util.Optional;
import org.tankrounds.water.Analyte;

/** How a chapter's test cards are read. */
public record Kit(int kitId, String name, List<KitScale> scales) {
    public Optional<KitScale> scale(Analyte analyte) {
        return scales.stream().filter(scale -> scale.analyte() == analyte).findFirst();
    }
}
