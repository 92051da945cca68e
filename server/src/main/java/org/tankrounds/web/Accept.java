package org.tankrounds.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Chooses among the media types that a route offers, by the request's {@code Accept} (RFC 9110, section 12.5.1). */
public final class Accept {
    private Accept() {}

    /**
     * @param header as sent; null or empty accepts everything
     * @param offered bare media types, the one preferred by the route first
     * @return empty where nothing that is offered is acceptable
     */
    public static Optional<String> choose(String header, List<String> offered) {
        if (header == null || header.isBlank()) {
            return Optional.of(offered.get(0));
        }
        String best = null;
        double bestQuality = 0;
        for (String type : offered) {
            double quality = quality(header, type);
            if (quality > bestQuality) {
                best = type;
                bestQuality = quality;
            }
        }
        return Optional.ofNullable(best);
    }

    private static double quality(String header, String type) {
        int closest = -1;
        double quality = 0;
        for (String range : header.split(",")) {
            String[] parts = range.strip().split("\\s*;\\s*", -1);
            int closeness = closeness(parts[0].toLowerCase(Locale.ROOT), type);
            if (closeness > closest) {
                closest = closeness;
                quality = weight(parts);
            }
        }
        return quality;
    }

    private static int closeness(String range, String type) {
        if (range.equals(type)) {
            return 2;
        }
        if (range.equals(type.substring(0, type.indexOf('/')) + "/*")) {
            return 1;
        }
        return range.equals("*/*") ? 0 : -1;
    }

    private static double weight(String[] parts) {
        for (int i = 1; i < parts.length; i++) {
            if (parts[i].matches("[qQ]=(0(\\.\\d{0,3})?|1(\\.0{0,3})?)")) {
                return Double.parseDouble(parts[i].substring(2));
            }
        }
        return 1;
    }
}
