package org.tankrounds.readings;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Bodies that no reading is; each with the status it must be answered with and the pointer that must be
 * named.
 */
final class WrongBodies {
    /** @param pointer empty where the body as a whole is at fault */
    record Wrong(String name, byte[] body, int status, String pointer) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static final String TIME = "\"measuredAt\": \"2026-01-12T14:05:00-05:00\"";

    private final List<Wrong> all = new ArrayList<>();

    private WrongBodies() {}

    static List<Wrong> all() {
        WrongBodies bodies = new WrongBodies();
        bodies.notJson();
        bodies.wrongShapes();
        bodies.wrongTimes();
        bodies.wrongTexts();
        bodies.wrongValues();
        bodies.wrongUnits();
        bodies.impossibleValues();
        return bodies.all;
    }

    private void notJson() {
        malformed("empty", "");
        malformed("white space", "  \n ");
        malformed("words", "temperature 52");
        malformed("cut off", "{" + TIME + ", \"values\": [{\"analyte\": \"ph\"");
        malformed("two documents", "{" + TIME + "} {" + TIME + "}");
        malformed("trailing comma", "{" + TIME + ",}");
        malformed("single quotes", "{'measuredAt': '2026-01-12T14:05:00Z'}");
        malformed("comment", "{" + TIME + " /* noon */}");
        malformed("NaN", values("{\"analyte\": \"ph\", \"value\": NaN, \"unit\": \"[pH]\"}"));
        malformed("Infinity", values("{\"analyte\": \"ph\", \"value\": Infinity, \"unit\": \"[pH]\"}"));
        malformed("leading zero", values("{\"analyte\": \"ph\", \"value\": 07.2, \"unit\": \"[pH]\"}"));
        malformed("leading plus", values("{\"analyte\": \"ph\", \"value\": +7.2, \"unit\": \"[pH]\"}"));
        malformed("decimal comma", values("{\"analyte\": \"ph\", \"value\": 7,2, \"unit\": \"[pH]\"}"));
        malformed("name twice", "{" + TIME + ", " + TIME + ", \"note\": \"x\"}");
        malformed("name twice inside",
                values("{\"analyte\": \"ph\", \"value\": 7, \"value\": 7, \"unit\": \"[pH]\"}"));
        malformed("deep arrays", "[".repeat(20_000) + "]".repeat(20_000));
        malformed("deep objects", "{\"a\":".repeat(5_000) + "1" + "}".repeat(5_000));
        malformed("endless number",
                values("{\"analyte\": \"ph\", \"value\": " + "9".repeat(5_000) + ", \"unit\": \"[pH]\"}"));
        for (String number : List.of("7E+9999999999", "1E-2147483649", "0e99999999999999999999")) {
            malformed("value " + number, values(ph(number)));
            malformed("step " + number,
                    values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": " + number
                            + "}"));
        }
        malformed("endless name", "{\"" + "n".repeat(60_000) + "\": 1}");
        malformed("raw line break in a text", "{" + TIME + ", \"note\": \"a\nb\"}");
        bytes("not UTF-8", new byte[] {'{', '"', (byte) 0xff, (byte) 0xfe, '"', ':', '1', '}'}, 400, "");
        bytes("Latin-1", ("{" + TIME + ", \"note\": \"trübe\"}").getBytes(StandardCharsets.ISO_8859_1), 400,
                "");
        bytes("UTF-16", ("{" + TIME + ", \"note\": \"x\"}").getBytes(StandardCharsets.UTF_16), 400, "");
        bytes("overlong UTF-8", new byte[] {'{', '"', (byte) 0xc0, (byte) 0xaf, '"', ':', '1', '}'}, 400, "");
        bytes("zero bytes", new byte[64], 400, "");
        bytes("byte-order mark", ("\ufeff{" + TIME + ", \"note\": \"x\"}").getBytes(StandardCharsets.UTF_8),
                400, "");
        bytes("UTF-16, little end first", ("{" + TIME + "}").getBytes(StandardCharsets.UTF_16LE), 400, "");
        bytes("compressed",
                new byte[] {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 0, 3, (byte) 0xab, (byte) 0xae, 5, 0}, 400,
                "");
        bytes("a little over 1 MB",
                ("{" + TIME + ", \"note\": \"" + "x".repeat(1_000_000) + "\"}")
                .getBytes(StandardCharsets.UTF_8), 413, "");
        bytes("10 MB", new byte[10_000_000], 413, "");
    }

    private void wrongShapes() {
        refused("null", "null", "");
        refused("number", "7.2", "");
        refused("text", "\"ph 7.2\"", "");
        refused("array", "[{" + TIME + "}]", "");
        refused("empty object", "{}", "/measuredAt");
        refused("nothing in it", "{" + TIME + ", \"values\": []}", "/values");
        refused("blank note only", "{" + TIME + ", \"note\": \"  \"}", "/values");
        refused("unknown field", "{" + TIME + ", \"note\": \"x\", \"notes\": \"y\"}", "/notes");
        refused("unknown field with a slash", "{" + TIME + ", \"note\": \"x\", \"a/b~c\": 1}", "/a~1b~0c");
        refused("id is ours", "{" + TIME + ", \"note\": \"x\", \"id\": \"abc\"}", "/id");
        refused("tank in a single post", "{" + TIME + ", \"note\": \"x\", \"tank\": \"abc\"}", "/tank");
        refused("unknown field in a value",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"colour\": 1}"),
                "/values/0/colour");
        refused("names are case-sensitive", "{" + TIME + ", \"Note\": \"x\"}", "/Note");
        refused("values null", "{" + TIME + ", \"values\": null}", "/values");
        refused("values object", "{" + TIME + ", \"values\": {\"ph\": 7}}", "/values");
        refused("a number among the values", values("7.2"), "/values/0");
        refused("null among the values", values("null"), "/values/0");
        refused("51 values", values("{}" + ", {}".repeat(50)), "/values");
    }

    private void wrongTimes() {
        time("null");
        time("1768245900");
        time("\"\"");
        time("\"2026-01-12T14:05:00\"");
        time("\"2026-01-12\"");
        time("\"yesterday\"");
        time("\"2026-02-30T10:00:00Z\"");
        time("\"2026-01-12 14:05:00Z\"");
        time("\"1999-12-31T23:59:59Z\"");
        time("\"2026-01-20T14:00:01Z\"");
        time("\"+123456-01-01T00:00:00Z\"");
        time("\"2026-01-12T25:00:00Z\"");
        time("\"2026-01-12T14:05:00+25:00\"");
        time("\"" + "2".repeat(10_000) + "\"");
    }

    private void wrongTexts() {
        refused("note too long", "{" + TIME + ", \"note\": \"" + "x".repeat(2_001) + "\"}", "/note");
        refused("note a number", "{" + TIME + ", \"note\": 5}", "/note");
        refused("note null", "{" + TIME + ", \"note\": null}", "/note");
        refused("NUL in the note", "{" + TIME + ", \"note\": \"a\\u0000b\"}", "/note");
        refused("half a character", "{" + TIME + ", \"note\": \"a\\ud83db\"}", "/note");
        refused("by too long", "{" + TIME + ", \"note\": \"x\", \"by\": \"" + "b".repeat(81) + "\"}", "/by");
        refused("by a list", "{" + TIME + ", \"note\": \"x\", \"by\": [\"period 3\"]}", "/by");
        refused("NUL in by", "{" + TIME + ", \"note\": \"x\", \"by\": \"p\\u00003\"}", "/by");
        refused("two lines in by", "{" + TIME + ", \"note\": \"x\", \"by\": \"a\\nb\"}", "/by");
    }

    private void wrongValues() {
        refused("no analyte", values("{\"value\": 7, \"unit\": \"[pH]\"}"), "/values/0/analyte");
        refused("unknown analyte", values("{\"analyte\": \"salt\", \"value\": 7, \"unit\": \"mg/L\"}"),
                "/values/0/analyte");
        refused("analyte in capitals", values("{\"analyte\": \"pH\", \"value\": 7, \"unit\": \"[pH]\"}"),
                "/values/0/analyte");
        refused("NUL in the analyte",
                values("{\"analyte\": \"ph\\u0000\", \"value\": 7, \"unit\": \"[pH]\"}"),
                "/values/0/analyte");
        refused("same analyte twice", values(ph("7") + ", " + ph("7.5")), "/values/1/analyte");
        refused("no value", values("{\"analyte\": \"ph\", \"unit\": \"[pH]\"}"), "/values/0/value");
        refused("value as text", values(ph("\"7.2\"")), "/values/0/value");
        refused("value true", values(ph("true")), "/values/0/value");
        refused("value null", values(ph("null")), "/values/0/value");
        refused("value 1e999", values(ph("1e999")), "/values/0/value");
        refused("value 1e999999999", values(ph("1e999999999")), "/values/0/value");
        refused("value 100e2147483647", values(ph("100e2147483647")), "/values/0/value");
        refused("value 1e-999999999", values(ph("1e-999999999")), "/values/0/value");
        refused("too many digits", values(ph("7.12345678901234567890")), "/values/0/value");
        refused("step 0", values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": 0}"),
                "/values/0/step");
        refused("step negative",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": -0.3}"),
                "/values/0/step");
        refused("step as text",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": \"0.3\"}"),
                "/values/0/step");
        refused("step null",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": null}"),
                "/values/0/step");
        refused("step 1000",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"step\": 1000}"),
                "/values/0/step");
        refused("below as text",
                values("{\"analyte\": \"nitrite\", \"value\": 0, \"unit\": \"mg/L\", \"as\": \"N\", "
                        + "\"below\": \"yes\"}"),
                "/values/0/below");
        refused("below 1",
                values("{\"analyte\": \"nitrite\", \"value\": 0, \"unit\": \"mg/L\", \"as\": \"N\", \"below\": 1}"),
                "/values/0/below");
        refused("temperature below",
                values("{\"analyte\": \"temperature\", \"value\": 9, \"unit\": \"Cel\", \"below\": true}"),
                "/values/0/below");
    }

    private void wrongUnits() {
        refused("no unit", values("{\"analyte\": \"ph\", \"value\": 7}"), "/values/0/unit");
        refused("unit a number", values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": 1}"),
                "/values/0/unit");
        refused("unit of another analyte",
                values("{\"analyte\": \"temperature\", \"value\": 7, \"unit\": \"mg/L\"}"), "/values/0/unit");
        refused("degree sign", values("{\"analyte\": \"temperature\", \"value\": 7, \"unit\": \"°C\"}"),
                "/values/0/unit");
        refused("ppm", values("{\"analyte\": \"nitrite\", \"value\": 0.3, \"unit\": \"ppm\", \"as\": \"N\"}"),
                "/values/0/unit");
        refused("form of another analyte",
                values("{\"analyte\": \"nitrite\", \"value\": 0.3, \"unit\": \"mg/L\", \"as\": \"NO3\"}"),
                "/values/0/as");
        refused("form where none is",
                values("{\"analyte\": \"ph\", \"value\": 7, \"unit\": \"[pH]\", \"as\": \"N\"}"),
                "/values/0/as");
        refused("form null",
                values("{\"analyte\": \"nitrite\", \"value\": 0.3, \"unit\": \"mg/L\", \"as\": null}"),
                "/values/0/as");
        refused("form in small letters",
                values("{\"analyte\": \"nitrite\", \"value\": 0.3, \"unit\": \"mg/L\", \"as\": \"no2\"}"),
                "/values/0/as");
        withoutForm("total_ammonia", 0.5);
        withoutForm("nitrite", 0.3);
        withoutForm("nitrate", 5);
        withoutForm("hardness", 90);
        refused("alkalinity without form",
                values("{\"analyte\": \"alkalinity\", \"value\": 80, \"unit\": \"mg/L\"}"), "/values/0/as");
    }

    private void impossibleValues() {
        refused("pH 71", values(ph("71")), "/values/0/value");
        refused("pH negative", values(ph("-1")), "/values/0/value");
        refused("ammonia negative",
                values("{\"analyte\": \"total_ammonia\", \"value\": -0.1, \"unit\": \"mg/L\", \"as\": \"N\"}"),
                "/values/0/value");
        refused("colder than ice",
                values("{\"analyte\": \"temperature\", \"value\": -15, \"unit\": \"Cel\"}"),
                "/values/0/value");
        refused("boiling over",
                values("{\"analyte\": \"temperature\", \"value\": 400, \"unit\": \"[degF]\"}"),
                "/values/0/value");
        refused("half a fish", values("{\"analyte\": \"deaths\", \"value\": 1.5, \"unit\": \"1\"}"),
                "/values/0/value");
        refused("minus one fish", values("{\"analyte\": \"deaths\", \"value\": -1, \"unit\": \"1\"}"),
                "/values/0/value");
        refused("101 % changed", values("{\"analyte\": \"water_change\", \"value\": 101, \"unit\": \"%\"}"),
                "/values/0/value");
        refused("oxygen 2000 %",
                values("{\"analyte\": \"dissolved_oxygen\", \"value\": 2000, \"unit\": \"%\"}"),
                "/values/0/value");
        refused("huge", values("{\"analyte\": \"chloride\", \"value\": 99999999999, \"unit\": \"mg/L\"}"),
                "/values/0/value");
    }

    private void malformed(String name, String body) {
        bytes(name, body.getBytes(StandardCharsets.UTF_8), 400, "");
    }

    private void refused(String name, String body, String pointer) {
        bytes(name, body.getBytes(StandardCharsets.UTF_8), 422, pointer);
    }

    private void time(String json) {
        String shown = json.length() > 40 ? "too long" : json;
        refused("time " + shown, "{\"measuredAt\": " + json + ", \"note\": \"x\"}", "/measuredAt");
    }

    private void withoutForm(String analyte, double value) {
        refused(analyte + " without form", values("{\"analyte\": \"" + analyte + "\", \"value\": " + value
                + ", \"unit\": \"mg/L\"}"), "/values/0/as");
    }

    private void bytes(String name, byte[] body, int status, String pointer) {
        all.add(new Wrong(name, body, status, pointer));
    }

    private static String values(String values) {
        return "{" + TIME + ", \"values\": [" + values + "]}";
    }

    private static String ph(String value) {
        return "{\"analyte\": \"ph\", \"value\": " + value + ", \"unit\": \"[pH]\"}";
    }
}
