package org.tankrounds.testing;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads squares as a phone does. */
public final class Squares {
    private static final int PIXELS_A_MODULE = 6;
    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-\\d+z");

    private Squares() {}

    /** As drawn in an SVG: its view box, and its one path of runs. */
    public static String read(String viewBox, String path) {
        int side = Integer.parseInt(viewBox.split(" ")[2]) * PIXELS_A_MODULE;
        byte[] light = new byte[side * side];
        Arrays.fill(light, (byte) 255);
        Matcher run = RUN.matcher(path);
        while (run.find()) {
            darken(light, side, number(run, 1), number(run, 2), number(run, 3));
        }
        return read(light, side, side);
    }

    /** Anywhere on a page that was made a picture. */
    public static String read(BufferedImage page) {
        byte[] light = new byte[page.getWidth() * page.getHeight()];
        for (int i = 0; i < light.length; i++) {
            light[i] = (byte) (page.getRGB(i % page.getWidth(), i / page.getWidth()) >> 8);
        }
        return read(light, page.getWidth(), page.getHeight());
    }

    /** A phone looks many times, each a little otherwise; of a picture that stands still, one look may miss. */
    private static String read(byte[] light, int width, int height) {
        LuminanceSource source = new PlanarYUVLuminanceSource(light, width, height, 0, 0, width, height, false);
        return Stream.of(new HybridBinarizer(source), new GlobalHistogramBinarizer(source))
                .flatMap(binarizer -> Stream.of(DecodeHintType.TRY_HARDER, DecodeHintType.PURE_BARCODE)
                        .flatMap(hint -> look(binarizer, hint).stream()))
                .findFirst().orElseThrow(() -> new AssertionError("there is no square that can be read"));
    }

    private static Optional<String> look(Binarizer binarizer, DecodeHintType hint) {
        try {
            return Optional.of(new QRCodeReader().decode(new BinaryBitmap(binarizer), Map.of(hint, true)).getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }

    private static void darken(byte[] light, int side, int x, int y, int length) {
        for (int row = y * PIXELS_A_MODULE; row < (y + 1) * PIXELS_A_MODULE; row++) {
            int from = row * side + x * PIXELS_A_MODULE;
            Arrays.fill(light, from, from + length * PIXELS_A_MODULE, (byte) 0);
        }
    }

    private static int number(Matcher run, int group) {
        return Integer.parseInt(run.group(group));
    }
}
