package org.tankrounds.web;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A form of several parts (RFC 7578) whose body is at hand: plain fields, and files. */
public final class MultipartForm {
    private static final Pattern BOUNDARY =
            Pattern.compile("boundary=(?:\"([^\"]{1,200})\"|([^;,\\s]{1,200}))", Pattern.CASE_INSENSITIVE);
    private static final Pattern NAME = Pattern.compile("[;\\s]name=\"([^\"]*)\"", Pattern.CASE_INSENSITIVE);
    private static final Pattern FILE_NAME = Pattern.compile("[;\\s]filename=\"([^\"]*)\"", Pattern.CASE_INSENSITIVE);
    private static final byte[] END_OF_HEADERS = {'\r', '\n', '\r', '\n'};
    private static final int MOST_PARTS = 50;

    /** @param name as the sender called it; empty where none was chosen */
    public record SentFile(String name, byte[] content) {}

    private final Map<String, String> fields = new LinkedHashMap<>();
    private final Map<String, SentFile> files = new LinkedHashMap<>();

    private MultipartForm() {}

    /** @throws IllegalArgumentException where the body is not made as the content type says */
    static MultipartForm parse(String contentType, byte[] body) {
        Matcher boundary = BOUNDARY.matcher(contentType);
        if (!boundary.find()) {
            throw new IllegalArgumentException("no boundary");
        }
        String text = boundary.group(1) == null ? boundary.group(2) : boundary.group(1);
        byte[] between = ("\r\n--" + text).getBytes(StandardCharsets.UTF_8);
        MultipartForm form = new MultipartForm();
        byte[] first = Arrays.copyOfRange(between, 2, between.length);
        int start = indexOf(body, first, 0) + first.length;
        for (int parts = 0; !closes(body, start); parts++) {
            int end = indexOf(body, between, start);
            if (parts == MOST_PARTS) {
                throw new IllegalArgumentException("too many parts");
            }
            form.add(body, start + 2, end);
            start = end + between.length;
        }
        return form;
    }

    public Optional<String> field(String name) {
        return Optional.ofNullable(fields.get(name));
    }

    /** Empty where no file was chosen. */
    public Optional<SentFile> file(String name) {
        return Optional.ofNullable(files.get(name)).filter(file -> !file.name().isEmpty());
    }

    private void add(byte[] body, int from, int until) {
        // The headers may be followed by nothing at all.
        int end = indexOf(body, END_OF_HEADERS, from);
        String headers = " " + new String(body, from, Math.max(0, end - from), StandardCharsets.UTF_8);
        int content = end + END_OF_HEADERS.length;
        Matcher name = NAME.matcher(headers);
        if (content > until || !name.find()) {
            throw new IllegalArgumentException("a part without a name");
        }
        Matcher file = FILE_NAME.matcher(headers);
        if (file.find()) {
            files.putIfAbsent(name.group(1), new SentFile(file.group(1), Arrays.copyOfRange(body, content, until)));
        } else {
            fields.putIfAbsent(name.group(1), new String(body, content, until - content, StandardCharsets.UTF_8));
        }
    }

    private static boolean closes(byte[] body, int at) {
        if (at + 2 > body.length) {
            throw new IllegalArgumentException("broke off");
        }
        return body[at] == '-' && body[at + 1] == '-';
    }

    private static int indexOf(byte[] body, byte[] wanted, int from) {
        for (int i = from; i <= body.length - wanted.length; i++) {
            if (body[i] == wanted[0] && Arrays.equals(body, i, i + wanted.length, wanted, 0, wanted.length)) {
                return i;
            }
        }
        throw new IllegalArgumentException("broke off");
    }
}
