package org.tankrounds.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The files of messages: one for each area in {@code areas.list} and language, its keys beginning with the area. */
final class Bundles {
    private static final String FOLDER = "/messages/";

    private Bundles() {}

    static Map<String, String> read(Language language) {
        Map<String, String> messages = new TreeMap<>();
        areas().forEach(area -> properties(area + "." + language.tag() + ".properties")
                .forEach((key, message) -> messages.put((String) key, (String) message)));
        return messages;
    }

    private static List<String> areas() {
        return text("areas.list").lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    }

    private static Properties properties(String file) {
        try (Reader text = new StringReader(text(file))) {
            Properties properties = new Properties();
            properties.load(text);
            return properties;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String file) {
        try (InputStream in = Bundles.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the build lacks " + FOLDER + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FOLDER + file, e);
        }
    }
}
