package org.tankrounds.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What came true of tanks in worlds that nothing was learned from, by the chance they were given: straight lines from
 * (0, 0) over such points to (1, 1). It never changes an order.
 *
 * @param points rising in both
 */
public record Calibration(List<Point> points) {

    private static final Point NEVER = new Point(0, 0);
    private static final Point ALWAYS = new Point(1, 1);

    /** Chances between 0 and 1. @param said mean of those given @param came share that came true */
    public record Point(double said, double came) {
    }

    /** Takes every chance as it is. */
    public static final Calibration NONE = new Calibration(List.of());

    public Calibration {
        points = List.copyOf(points);
    }

    /** The chance that comes true where one is said. */
    double of(double said) {
        Point from = NEVER;
        for (Point to : points) {
            if (said < to.said) {
                return between(from, to, said);
            }
            from = to;
        }
        return between(from, ALWAYS, said);
    }

    private static double between(Point from, Point to, double said) {
        return from.came + (to.came - from.came) * (said - from.said) / (to.said - from.said);
    }

    /** As entries of a properties file under a name. */
    List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        for (Point point : points) {
            lines.add(name + "." + lines.size() + "=" + point.said + " " + point.came);
        }
        return lines;
    }

    static Calibration read(Map<String, String> entries, String name) {
        List<Point> points = new ArrayList<>();
        for (String line; (line = entries.get(name + "." + points.size())) != null;) {
            String[] words = line.split(" ");
            points.add(new Point(Double.parseDouble(words[0]), Double.parseDouble(words[1])));
        }
        return new Calibration(points);
    }
}
