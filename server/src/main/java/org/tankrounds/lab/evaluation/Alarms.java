package org.tankrounds.lab.evaluation;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What a voice is worth as an alarm: it is raised on every morning on which its number reaches a threshold.
 *
 * <p>An alarm is false where the water is beyond no limit for two hours in the 72 hours after it. An episode
 * (see {@link TankCourse}) counts where the tank was asked about in the 72 hours before its first hour; it
 * was foreseen where one of these mornings had an alarm, and the lead is the time from the first such morning
 * to that hour. A morning stands for as many as were left out, so that asking seldom makes no alarm rarer.
 *
 * @param perTankMonth alarms in 30 days
 * @param falsePerTankMonth of these, false ones
 * @param foreseen share of the episodes
 * @param medianLeadHours of those foreseen; NaN without any
 */
record Alarms(double threshold, double perTankMonth, double falsePerTankMonth, int episodes, double foreseen,
        double medianLeadHours) {

    static Alarms of(Examination examination, Answered answered, double threshold) {
        Map<LabTank, TreeSet<Integer>> asked = mornings(answered, i -> true);
        Map<LabTank, TreeSet<Integer>> raised = mornings(answered, i -> answered.said()[i] >= threshold);
        long wrong = IntStream.range(0, answered.size())
                .filter(i -> answered.said()[i] >= threshold && !answered.beyond()[i]).count();
        int[] leads = leads(examination.courses(), asked, raised);
        double[] foreseen = Arrays.stream(leads).filter(lead -> lead > 0).asDoubleStream().sorted().toArray();
        double perTankMonth = examination.everyNth()
                / examination.courses().stream().mapToDouble(TankCourse::months).sum();
        return new Alarms(threshold, perTankMonth * raised.values().stream().mapToInt(TreeSet::size).sum(),
                perTankMonth * wrong, leads.length, foreseen.length / (double) leads.length, median(foreseen));
    }

    private static Map<LabTank, TreeSet<Integer>> mornings(Answered answered, IntPredicate counts) {
        Map<LabTank, TreeSet<Integer>> mornings = new HashMap<>();
        IntStream.range(0, answered.size()).filter(counts).mapToObj(answered.questions()::get)
                .forEach(question -> mornings.computeIfAbsent(question.tank(), none -> new TreeSet<>())
                        .add(question.morning()));
        return mornings;
    }

    /** One for each episode that counts; 0 where it was not foreseen. */
    private static int[] leads(List<TankCourse> courses, Map<LabTank, TreeSet<Integer>> asked,
            Map<LabTank, TreeSet<Integer>> raised) {
        TreeSet<Integer> never = new TreeSet<>();
        return courses.stream().flatMapToInt(course -> course.episodes().stream()
                .filter(hour -> lead(asked.getOrDefault(course.tank(), never), hour) > 0)
                .mapToInt(hour -> lead(raised.getOrDefault(course.tank(), never), hour))).toArray();
    }

    /** Hours from the first of the mornings in the 72 hours before an hour; 0 without one. */
    private static int lead(TreeSet<Integer> mornings, int hour) {
        Integer first = mornings.ceiling(hour - TankCourse.BEFORE_HOURS);
        return first == null || first >= hour ? 0 : hour - first;
    }

    private static double median(double[] sorted) {
        int half = sorted.length / 2;
        return sorted.length == 0 ? Double.NaN
                : sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** From which number on a voice raises as many alarms as wanted, or as near to it as its ties allow. */
    static double threshold(double[] said, int wanted) {
        double[] descending = Arrays.stream(said).map(each -> -each).sorted().map(each -> -each).toArray();
        int fewer = Math.min(wanted, descending.length);
        while (fewer > 0 && fewer < descending.length && descending[fewer - 1] == descending[fewer]) {
            fewer--;
        }
        int more = Math.min(wanted, descending.length);
        while (more > 0 && more < descending.length && descending[more - 1] == descending[more]) {
            more++;
        }
        int nearest = wanted - fewer <= more - wanted ? fewer : more;
        return nearest == 0 ? Double.POSITIVE_INFINITY : descending[nearest - 1];
    }
}
