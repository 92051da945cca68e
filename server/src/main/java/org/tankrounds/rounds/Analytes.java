package org.tankrounds.rounds;

import java.util.List;

/** Public names of analytes inside a sentence. */
final class Analytes {
    private Analytes() {}

    static String inSentence(String code) {
        return switch (code) {
            case "ph" -> "pH";
            case "total_ammonia" -> "ammonia";
            default -> code.replace('_', ' ');
        };
    }

    /** "a", "a and b", "a, b and c" */
    static String list(List<String> names) {
        if (names.size() < 2) {
            return String.join("", names);
        }
        return String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }
}
