package org.tankrounds.places;

import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** What a card and its unit are called on a page. */
final class CardNames {
    private CardNames() {}

    static String of(Analyte analyte) {
        return switch (analyte) {
            case PH -> "pH";
            case TOTAL_AMMONIA -> "Ammonia, total";
            case DISSOLVED_OXYGEN -> "Dissolved oxygen";
            default -> {
                String word = analyte.code().replace('_', ' ');
                yield Character.toUpperCase(word.charAt(0)) + word.substring(1);
            }
        };
    }

    static String words(UnitForm form) {
        return switch (form.unit()) {
            case "[dH]" -> "German degrees (°dH)";
            case "[pH]" -> "pH";
            case "%" -> "% of saturation";
            default -> form.spelling();
        };
    }
}
