package org.tankrounds.lab.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What came true beside what was said, as an SVG picture that needs nothing else: a dot per tenth with the
 * span of 95 of 100 resamplings, the line on which every chance keeps its word, and below how many cases each
 * tenth has.
 */
final class ReliabilityPlot {

    private static final String INK = "#16242b";
    private static final String SOFT_INK = "#51626b";
    private static final String RULE = "#d9d6cc";
    private static final String DEEP = "#0d4f5c";
    private static final String PALE = "#a9ccd3";
    private static final int LEFT = 72;
    private static final int TOP = 84;
    private static final int SIDE = 420;
    private static final int COUNTS_TOP = TOP + SIDE + 36;
    private static final int COUNTS_HEIGHT = 70;
    private static final int FLOOR = COUNTS_TOP + COUNTS_HEIGHT;
    private static final int WIDTH = LEFT + SIDE + 40;
    private static final int HEIGHT = FLOOR + 92;

    private final List<Reliability> tenths;
    private final List<String> lines = new ArrayList<>();

    private ReliabilityPlot(List<Reliability> tenths) {
        this.tenths = tenths;
    }

    /** @param subtitle what was asked */
    static List<String> of(List<Reliability> tenths, String subtitle) {
        return new ReliabilityPlot(tenths).drawn(subtitle);
    }

    private List<String> drawn(String subtitle) {
        add("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d' width='%d' height='%d' role='img'",
                WIDTH, HEIGHT, WIDTH, HEIGHT);
        add(" font-family='system-ui, sans-serif' font-size='13' fill='%s'>", INK);
        add("<title>What came true of the chances said</title>");
        add("<rect width='100%%' height='100%%' fill='#ffffff'/>");
        add("<text x='%d' y='34' font-size='18' font-weight='600'>What came true of the chances said</text>",
                LEFT);
        add("<text x='%d' y='58' fill='%s'>%s</text>", LEFT, SOFT_INK, subtitle);
        grid();
        scales();
        tenths.stream().filter(tenth -> tenth.cases() > 0).forEach(this::draw);
        add("</svg>");
        return lines;
    }

    private void grid() {
        for (int percent = 0; percent <= 100; percent += 20) {
            line(x(percent / 100.0), TOP, x(percent / 100.0), TOP + SIDE, RULE);
            line(LEFT, y(percent / 100.0), LEFT + SIDE, y(percent / 100.0), RULE);
        }
        line(LEFT, FLOOR, LEFT + SIDE, FLOOR, RULE);
        add("<path d='M%.1f %.1fL%.1f %.1f' stroke='%s' stroke-dasharray='5 4'/>",
                x(0), y(0), x(1), y(1), SOFT_INK);
    }

    private void scales() {
        for (int percent = 0; percent <= 100; percent += 20) {
            add("<text x='%d' y='%.1f' text-anchor='end'>%d %%</text>",
                    LEFT - 8, y(percent / 100.0) + 4, percent);
            centred(x(percent / 100.0), FLOOR + 20, percent + " %");
        }
        centred(x(0.5), FLOOR + 46, "chance said");
        add("<text x='%d' y='%d' fill='%s'>%s</text>", LEFT, FLOOR + 76, SOFT_INK,
                "Dashed: as said. Upright: 95 of 100 resamplings of the tanks.");
        upright(y(0.5), "came true");
        upright(COUNTS_TOP + COUNTS_HEIGHT / 2.0, "cases");
    }

    private void draw(Reliability tenth) {
        double x = x(tenth.said());
        add("<path d='M%.1f %.1fV%.1f' stroke='%s' stroke-width='2'/>", x,
                y(tenth.said() + tenth.miss().low()), y(tenth.said() + tenth.miss().high()), DEEP);
        add("<circle cx='%.1f' cy='%.1f' r='5' fill='%s'/>", x, y(tenth.cameTrue()), DEEP);
        double height = COUNTS_HEIGHT * tenth.cases() / (double) most();
        double left = x(tenth.tenth() / 10.0);
        add("<rect x='%.1f' y='%.1f' width='%d' height='%.1f' fill='%s'/>",
                left + 2, FLOOR - height, SIDE / 10 - 4, height, PALE);
        add("<text x='%.1f' y='%.1f' text-anchor='middle' font-size='11' fill='%s'>%d</text>",
                left + SIDE / 20.0, FLOOR - height - 4, SOFT_INK, tenth.cases());
    }

    private int most() {
        return tenths.stream().mapToInt(Reliability::cases).max().orElse(1);
    }

    private void line(double x1, double y1, double x2, double y2, String colour) {
        add("<path d='M%.1f %.1fL%.1f %.1f' stroke='%s'/>", x1, y1, x2, y2, colour);
    }

    private void centred(double x, double y, String words) {
        add("<text x='%.1f' y='%.1f' text-anchor='middle'>%s</text>", x, y, words);
    }

    private void upright(double y, String words) {
        add("<text transform='translate(18 %.1f) rotate(-90)' text-anchor='middle'>%s</text>", y, words);
    }

    private static double x(double chance) {
        return LEFT + SIDE * chance;
    }

    private static double y(double share) {
        return TOP + SIDE * (1 - Math.max(0, Math.min(1, share)));
    }

    private void add(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values));
    }
}
