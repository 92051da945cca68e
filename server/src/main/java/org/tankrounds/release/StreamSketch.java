package org.tankrounds.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tankrounds.stream.StreamGroup;

/**
 * What stream animals look like, drawn from a few strokes: bodies, legs, tails, cases. The head is to the right. In the
 * coordinates of a picture that is 80 wide and 44 high.
 */
final class StreamSketch {
    private static final double MIDDLE = 22;

    private final List<String> strokes = new ArrayList<>();

    private StreamSketch() {}

    /** Paths of one picture, to be stroked and not filled. */
    static List<String> of(StreamGroup group) {
        StreamSketch sketch = new StreamSketch();
        switch (group) {
            case GIANT_STONEFLY -> sketch.stonefly(5).gillsBelow(26, 40);
            case GOLDEN_STONEFLY -> sketch.stonefly(4).chevrons(24, 38).gillsBelow(44, 52);
            case STONEFLY_UNSURE -> sketch.stonefly(3).question(30, 10);
            case FLAT_MAYFLY -> sketch.mayfly(5, 9, 14).plates(20, 40, 3);
            case SWIMMING_MAYFLY -> sketch.mayfly(3, 4, 7).plates(22, 42, 2);
            case CRAWLING_MAYFLY -> sketch.mayfly(6, 5, 9).chevrons(22, 38);
            case PLATED_MAYFLY -> sketch.mayfly(4, 4, 10).box(28, 17, 10, 10).line(33, 17, 33, 27);
            case MAYFLY_UNSURE -> sketch.mayfly(4, 5, 9).question(30, 9);
            case NET_CADDIS -> sketch.grub(6).plate(56).plate(61).gillsBelow(22, 46).brush(12);
            case ROAMING_CADDIS -> sketch.grub(7).plate(61).hooks(13);
            case SADDLE_CADDIS -> sketch.saddle();
            case SQUARE_CADDIS -> sketch.squareCase();
            case STICK_CADDIS -> sketch.stickCase();
            case CADDIS_UNSURE -> sketch.tube().question(32, 20);
            case WATER_PENNY -> sketch.penny();
            case RIFFLE_BEETLE -> sketch.beetle();
            case DOBSONFLY -> sketch.filaments(14, 50).jaws(68, 5).hooks(12);
            case ALDERFLY -> sketch.filaments(22, 52).jaws(66, 3).path("M18 22 C12 22 8 20 3 18");
            case DRAGONFLY -> sketch.dragonfly();
            case DAMSELFLY -> sketch.damselfly();
            case CRANE_FLY -> sketch.craneFly();
            case SNIPE_FLY -> sketch.snipeFly();
            case BLACK_FLY -> sketch.blackFly();
            case MIDGE -> sketch.midge(false);
            case RED_MIDGE -> sketch.midge(true);
            case SCUD -> sketch.scud();
            case SOWBUG -> sketch.sowbug();
            case CRAYFISH -> sketch.crayfish();
            case GILLED_SNAIL -> sketch.snail(true);
            case POUCH_SNAIL -> sketch.snail(false);
            case CLAM -> sketch.clam();
            case WORM -> sketch.worm();
            case LEECH -> sketch.leech();
            case UNKNOWN -> sketch.ellipse(40, MIDDLE, 17, 17).question(40, 20);
        }
        return List.copyOf(sketch.strokes);
    }

    /* ---- kinds of bodies ---- */

    private StreamSketch stonefly(double half) {
        return body(18, 60, half, 7).ellipse(64, MIDDLE, 4, half)
                .legs(44, half).legs(51, half).legs(57, half)
                .line(44, MIDDLE - half, 50, MIDDLE).line(44, MIDDLE + half, 50, MIDDLE)
                .path("M18 21 C12 19 8 16 3 14").path("M18 23 C12 25 8 28 3 30")
                .path("M67 20 C71 17 74 14 77 12").path("M67 24 C71 27 74 30 77 32");
    }

    private StreamSketch mayfly(double half, double headHigh, double tail) {
        return body(20, 56, half, 7).ellipse(61, MIDDLE, 5, headHigh)
                .legs(46, half).legs(51, half).legs(55, half)
                .path("M20 22 L" + at(20 - tail) + " 22").path("M20 21 C15 18 12 15 " + at(20 - tail) + " 13")
                .path("M20 23 C15 26 12 29 " + at(20 - tail) + " 31")
                .path("M65 20 L70 17").path("M65 24 L70 27");
    }

    /** A larva without a case, bent as they lie. */
    private StreamSketch grub(double half) {
        path("M14 30 C20 34 30 " + at(28 + half) + " 44 " + at(25 + half) + " C54 " + at(23 + half) + " 60 28 66 24")
                .path("M14 24 C22 20 30 " + at(24 - half) + " 44 " + at(23 - half) + " C54 " + at(22 - half) + " 60 18 66 18")
                .path("M14 24 C12 26 12 28 14 30").ellipse(68, 21, 4, 4);
        for (int x = 22; x <= 52; x += 7) {
            path("M" + x + " " + at(25 - half) + " C" + at(x + 2) + " 25 " + at(x + 2) + " 27 " + x + " " + at(26 + half));
        }
        return line(54, 29, 52, 37).line(59, 27, 59, 35).line(63, 26, 66, 33);
    }

    private StreamSketch filaments(double from, double to) {
        body(from, 62, 5, 9).ellipse(66, MIDDLE, 4, 4.5).legs(54, 5).legs(58, 5).legs(62, 4);
        for (double x = from + 3; x <= to - 4; x += 6) {
            path("M" + at(x) + " 17 L" + at(x - 3) + " 9").path("M" + at(x) + " 27 L" + at(x - 3) + " 35");
        }
        return this;
    }

    private StreamSketch saddle() {
        path("M14 33 C14 14 30 8 42 8 C56 8 68 16 68 33 Z");
        for (double[] pebble : new double[][] {
            {24, 26, 5}, {35, 28, 5}, {46, 28, 5}, {57, 27, 5}, {30, 17, 5}, {41, 17, 5}, {52, 17, 5}}) {
            ellipse(pebble[0], pebble[1], pebble[2], pebble[2] - 1);
        }
        return line(26, 33, 24, 38).line(42, 33, 42, 38).line(58, 33, 60, 38);
    }

    private StreamSketch squareCase() {
        path("M8 24 L58 14 L58 32 L8 27 Z").line(8, 25.5, 58, 23);
        for (int x = 16; x <= 52; x += 6) {
            line(x, 24 - 0.2 * (x - 8), x, 27 + 0.1 * (x - 8));
        }
        return headOut();
    }

    private StreamSketch stickCase() {
        tube();
        line(10, 15, 34, 13).line(20, 19, 46, 15).line(8, 24, 30, 22).line(28, 26, 56, 22).line(12, 29, 40, 28);
        return line(34, 31, 58, 27).line(38, 19, 57, 17);
    }

    private StreamSketch tube() {
        return path("M10 16 L58 14 L58 30 L10 28 C8 24 8 20 10 16 Z").headOut();
    }

    private StreamSketch headOut() {
        return path("M58 19 C62 18 65 19 66 22 C65 26 62 27 58 27").ellipse(69, 22.5, 3.5, 3.5)
                .line(61, 27, 60, 33).line(64, 26, 66, 32).line(70, 26, 73, 30);
    }

    private StreamSketch penny() {
        ellipse(40, MIDDLE, 22, 16).ellipse(40, MIDDLE, 17, 11);
        for (double x = 26; x <= 54; x += 4) {
            double high = 10.5 * Math.sqrt(1 - Math.pow((x - 40) / 17, 2));
            line(x, MIDDLE - high, x, MIDDLE + high);
        }
        return line(23, MIDDLE, 57, MIDDLE);
    }

    private StreamSketch beetle() {
        return ellipse(36, MIDDLE, 17, 11).line(19, MIDDLE, 50, MIDDLE).path("M50 13.5 C46 18 46 26 50 30.5")
                .ellipse(56, MIDDLE, 5, 6).legs(30, 10).legs(40, 10).legs(48, 8)
                .path("M60 19 L66 15").path("M60 25 L66 29")
                .path("M22 18 L46 17").path("M22 26 L46 27");
    }

    private StreamSketch dragonfly() {
        path("M10 22 C12 10 32 8 44 17 L44 27 C32 36 12 34 10 22 Z").path("M10 22 L5 22").path("M11 19 L6 17")
                .path("M11 25 L6 27").ellipse(52, MIDDLE, 8, 6).ellipse(64, MIDDLE, 5, 6)
                .ellipse(66, 17, 2.5, 2.5).ellipse(66, 27, 2.5, 2.5).legs(47, 6).legs(52, 6).legs(57, 5);
        for (int x = 16; x <= 40; x += 6) {
            path("M" + x + " 14 C" + at(x + 2) + " 20 " + at(x + 2) + " 24 " + x + " 30");
        }
        return this;
    }

    private StreamSketch damselfly() {
        return body(26, 56, 3, 7).ellipse(62, MIDDLE, 4, 5).ellipse(63, 17.5, 2, 2).ellipse(63, 26.5, 2, 2)
                .legs(47, 3).legs(51, 3).legs(55, 3)
                .path("M26 22 C20 18 12 19 6 22 C12 25 20 26 26 22 Z").path("M26 21 C20 12 14 9 7 9 C11 15 18 20 26 21 Z")
                .path("M26 23 C20 32 14 35 7 35 C11 29 18 24 26 23 Z");
    }

    private StreamSketch craneFly() {
        body(16, 66, 7, 7).ellipse(66, MIDDLE, 3, 4);
        for (int i = 0; i < 4; i++) {
            double y = 14.5 + 5 * i;
            path("M17 " + at(17 + 3.3 * i) + " C13 " + at(y) + " 10 " + at(y) + " 7 " + at(y - 1));
        }
        return this;
    }

    private StreamSketch snipeFly() {
        body(18, 64, 5, 8).ellipse(66, MIDDLE, 3, 3).path("M18 20 C12 17 9 15 5 11").path("M18 24 C12 27 9 29 5 33")
                .path("M10 15 L9 19").path("M13 17 L12 21").path("M10 29 L9 25").path("M13 27 L12 23");
        for (int x = 24; x <= 56; x += 6) {
            line(x, 27, x - 2, 33);
        }
        return this;
    }

    private StreamSketch blackFly() {
        path("M10 22 C10 13 20 11 30 14 C42 17 52 17 60 19 L60 25 C52 27 42 27 30 30 C20 33 10 31 10 22 Z")
                .ellipse(63, MIDDLE, 4, 4).path("M65 19 C70 14 72 12 76 12").path("M65 19 C70 16 73 15 77 16")
                .path("M65 25 C70 30 72 32 76 32").path("M65 25 C70 28 73 29 77 28").line(52, 26, 51, 32)
                .path("M7 17 L7 27");
        for (int x = 22; x <= 52; x += 8) {
            path("M" + x + " " + at(13 + 0.1 * (x - 22)) + " L" + x + " " + at(31 - 0.1 * (x - 22)));
        }
        return this;
    }

    private StreamSketch midge(boolean red) {
        path("M10 30 C22 40 28 12 40 16 C52 20 54 34 66 22").path("M10 25 C22 33 28 7 42 11 C54 15 54 27 64 18")
                .path("M10 25 C8 27 8 29 10 30").ellipse(67, 19, 3.5, 3).line(62, 26, 62, 31).line(11, 31, 8, 36);
        if (red) {
            for (double[] dash : new double[][] {{17, 28}, {23, 24}, {29, 18}, {35, 14}, {41, 14}, {47, 18}, {53, 23}, {59, 24}}) {
                line(dash[0] - 2, dash[1] + 1.5, dash[0] + 2, dash[1] - 1.5).line(dash[0] - 1, dash[1] + 3, dash[0] + 2, dash[1]);
            }
        }
        return this;
    }

    private StreamSketch scud() {
        path("M12 34 C10 18 24 8 40 8 C54 8 62 14 66 20 C58 24 50 20 40 20 C30 20 24 28 22 36 Z").ellipse(62, 18, 1.2, 1.2);
        for (int x = 26; x <= 56; x += 6) {
            path("M" + x + " " + at(22 - 0.04 * (x - 26)) + " L" + at(x + 2) + " 32");
        }
        for (double[] seam : new double[][] {{20, 16, 24, 24}, {27, 11, 30, 21}, {35, 9, 37, 19}, {44, 8, 45, 19}, {53, 10, 52, 20}}) {
            line(seam[0], seam[1], seam[2], seam[3]);
        }
        return path("M65 18 C70 14 73 13 77 12").path("M66 20 C70 19 74 19 77 19").line(14, 34, 8, 38).line(18, 36, 13, 40);
    }

    private StreamSketch sowbug() {
        path("M14 22 C14 13 26 11 40 11 C54 11 62 15 62 22 C62 29 54 33 40 33 C26 33 14 31 14 22 Z")
                .path("M62 19 C68 14 72 13 77 12").path("M62 25 C68 30 72 31 77 32").path("M14 20 L7 16").path("M14 24 L7 28");
        for (int x = 20; x <= 56; x += 6) {
            line(x, 12.5, x, 31.5).line(x + 2, 12, x, 5).line(x + 2, 32, x, 39);
        }
        return this;
    }

    private StreamSketch crayfish() {
        path("M30 17 C38 13 50 14 58 18 L62 22 L58 26 C50 30 38 31 30 27 Z").line(44, 15, 44, 29)
                .path("M60 19 C66 10 70 10 76 8 C74 13 71 15 67 15").path("M60 25 C66 34 70 34 76 36 C74 31 71 29 67 29")
                .path("M62 21 C68 20 73 21 78 19").path("M62 23 C68 24 73 23 78 25");
        for (int x = 12; x <= 26; x += 6) {
            path("M" + x + " 17 C" + at(x - 2) + " 20 " + at(x - 2) + " 24 " + x + " 27");
        }
        path("M30 17 L12 17 M30 27 L12 27").path("M12 17 L4 13 L8 22 L4 31 L12 27");
        return line(36, 28, 32, 36).line(42, 30, 40, 38).line(48, 30, 49, 38)
                .line(36, 16, 32, 8).line(42, 14, 40, 6).line(48, 14, 49, 6);
    }

    /** The point up; a gilled snail opens to the right, a pouch snail to the left. */
    private StreamSketch snail(boolean right) {
        double way = right ? 1 : -1;
        path(turned("M40 4 C46 8 54 18 56 28 C57 36 50 40 42 40 C30 40 24 34 26 26 C28 18 34 8 40 4 Z", way));
        path(turned("M44 26 C51 24 56 28 55 33 C53 38 45 38 42 34 C40 30 41 27 44 26 Z", way));
        return path(turned("M30 20 C36 24 44 22 49 17", way)).path(turned("M34 12 C38 15 42 14 44 11", way))
                .path(turned("M27 28 C31 31 37 30 41 28", way));
    }

    private StreamSketch clam() {
        return path("M12 30 C14 16 28 8 40 8 C54 8 66 16 68 30 C58 38 22 38 12 30 Z")
                .path("M18 29 C22 19 31 13 40 13 C50 13 58 19 62 29").path("M25 29 C29 22 34 18 40 18 C46 18 51 22 55 29")
                .path("M36 8 C38 5 42 5 44 8");
    }

    private StreamSketch worm() {
        path("M6 26 C16 12 24 12 32 22 C40 32 48 32 56 22 C62 15 68 15 74 19")
                .path("M7 31 C16 18 24 18 31 27 C40 38 49 37 57 27 C63 20 68 20 74 22")
                .path("M6 26 C5 28 5 30 7 31").path("M74 19 C76 20 76 21 74 22");
        for (double[] ring : new double[][] {{13, 19, 14, 24}, {20, 15, 20, 20}, {27, 17, 26, 22}, {34, 25, 31, 28},
            {41, 30, 40, 35}, {48, 29, 49, 34}, {55, 23, 58, 26}, {62, 17, 63, 22}}) {
            line(ring[0], ring[1], ring[2], ring[3]);
        }
        return this;
    }

    private StreamSketch leech() {
        path("M10 22 C16 12 40 10 60 18 C66 20 70 21 73 22 C70 23 66 24 60 26 C40 34 16 32 10 22 Z")
                .ellipse(10, MIDDLE, 4, 5).ellipse(72, MIDDLE, 2, 2);
        for (int x = 18; x <= 62; x += 5) {
            double high = 9.2 * Math.sin(Math.PI * (x - 6) / 74.0);
            path("M" + x + " " + at(MIDDLE - high) + " C" + at(x + 2) + " 20 " + at(x + 2) + " 24 " + x + " " + at(MIDDLE + high));
        }
        return this;
    }

    /* ---- parts ---- */

    /** From tail to head, with so many seams. */
    private StreamSketch body(double from, double to, double half, int seams) {
        path("M" + at(from) + " " + at(MIDDLE - half * 0.5) + " C" + at(from + 8) + " " + at(MIDDLE - half) + " "
                + at(to - 8) + " " + at(MIDDLE - half * 1.2) + " " + at(to) + " " + at(MIDDLE - half)
                + " L" + at(to) + " " + at(MIDDLE + half) + " C" + at(to - 8) + " " + at(MIDDLE + half * 1.2) + " "
                + at(from + 8) + " " + at(MIDDLE + half) + " " + at(from) + " " + at(MIDDLE + half * 0.5) + " Z");
        for (int i = 1; i <= seams; i++) {
            double x = from + i * (to - from) / (seams + 1);
            line(x, MIDDLE - half * 0.9, x, MIDDLE + half * 0.9);
        }
        return this;
    }

    /** A pair, one to each side. */
    private StreamSketch legs(double x, double half) {
        return path("M" + at(x) + " " + at(MIDDLE - half) + " L" + at(x + 3) + " " + at(MIDDLE - half - 6) + " L" + at(x + 7)
                + " " + at(MIDDLE - half - 8))
                .path("M" + at(x) + " " + at(MIDDLE + half) + " L" + at(x + 3) + " " + at(MIDDLE + half + 6) + " L"
                        + at(x + 7) + " " + at(MIDDLE + half + 8));
    }

    private StreamSketch plates(double from, double to, double size) {
        for (double x = from; x <= to; x += 2.6 * size) {
            ellipse(x + size, MIDDLE - 4 - size, size, size * 0.8).ellipse(x + size, MIDDLE + 4 + size, size, size * 0.8);
        }
        return this;
    }

    private StreamSketch chevrons(double from, double to) {
        for (double x = from; x <= to; x += 6) {
            path("M" + at(x) + " 19 L" + at(x + 3) + " 22 L" + at(x) + " 25");
        }
        return this;
    }

    private StreamSketch gillsBelow(double from, double to) {
        for (double x = from; x <= to; x += 6) {
            path("M" + at(x) + " 30 L" + at(x - 2) + " 36").path("M" + at(x) + " 30 L" + at(x) + " 37")
                    .path("M" + at(x) + " 30 L" + at(x + 2) + " 36");
        }
        return this;
    }

    private StreamSketch plate(double x) {
        return path("M" + at(x) + " 19 L" + at(x) + " 27").path("M" + at(x - 3) + " 19 L" + at(x) + " 19");
    }

    private StreamSketch brush(double x) {
        return line(x, 27, x - 7, 22).line(x, 27, x - 8, 26).line(x, 27, x - 7, 30).line(x, 27, x - 5, 33);
    }

    private StreamSketch hooks(double x) {
        return path("M" + at(x) + " 20 C" + at(x - 5) + " 18 " + at(x - 7) + " 21 " + at(x - 5) + " 23")
                .path("M" + at(x) + " 26 C" + at(x - 5) + " 28 " + at(x - 7) + " 25 " + at(x - 5) + " 24");
    }

    private StreamSketch jaws(double x, double size) {
        return path("M" + at(x) + " 19 C" + at(x + size) + " 17 " + at(x + size + 2) + " 20 " + at(x + size) + " 21.5")
                .path("M" + at(x) + " 25 C" + at(x + size) + " 27 " + at(x + size + 2) + " 24 " + at(x + size) + " 22.5");
    }

    private StreamSketch question(double x, double y) {
        return path("M" + at(x - 4) + " " + at(y - 3) + " C" + at(x - 4) + " " + at(y - 9) + " " + at(x + 5) + " " + at(y - 9)
                + " " + at(x + 4) + " " + at(y - 3) + " C" + at(x + 4) + " " + at(y) + " " + at(x) + " " + at(y) + " " + at(x)
                + " " + at(y + 4)).line(x, y + 8, x, y + 8.5);
    }

    private StreamSketch box(double x, double y, double wide, double high) {
        return path("M" + at(x) + " " + at(y) + " h" + at(wide) + " v" + at(high) + " h" + at(-wide) + " Z");
    }

    private StreamSketch ellipse(double x, double y, double wide, double high) {
        return path("M" + at(x - wide) + " " + at(y) + " a" + at(wide) + " " + at(high) + " 0 1 0 " + at(2 * wide)
                + " 0 a" + at(wide) + " " + at(high) + " 0 1 0 " + at(-2 * wide) + " 0 Z");
    }

    private StreamSketch line(double x1, double y1, double x2, double y2) {
        return path("M" + at(x1) + " " + at(y1) + " L" + at(x2) + " " + at(y2));
    }

    private StreamSketch path(String d) {
        strokes.add(d);
        return this;
    }

    /** Mirrored about the middle where the way is -1; only for pairs of absolute coordinates. */
    private static String turned(String d, double way) {
        StringBuilder turned = new StringBuilder();
        boolean isX = true;
        for (String part : d.split("(?<=[MCLZ])|\\s+")) {
            if (part.isEmpty()) {
                continue;
            }
            if (part.matches("[MCLZ]")) {
                turned.append(part);
                isX = true;
                continue;
            }
            double number = Double.parseDouble(part);
            turned.append(isX ? at(40 + way * (number - 40)) : at(number)).append(' ');
            isX = !isX;
        }
        return turned.toString().strip();
    }

    private static String at(double number) {
        return String.format(Locale.ROOT, "%.1f", number).replaceFirst("\\.0$", "");
    }
}
