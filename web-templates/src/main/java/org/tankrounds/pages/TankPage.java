package org.tankrounds.pages;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One tank: what is going on, what will, what to do.
 *
 * @param title the answer
 * @param backText empty for a class that came with its card, which sees this tank only
 * @param doors to what is near and concerns it
 * @param saved what became of a reading that was just put in; empty otherwise
 * @param together what all of the advice is expected to do; may be empty
 * @param tasks what the class was asked to do, or ticked as done, lately
 * @param ways how it could go; null before the first forecast
 * @param takenBack readings of the last weeks that somebody took back, to be looked at
 * @param mayCount whether the reader may see and write down the count of its fish
 * @param inCharge whether the reader hands out the tank's card
 * @param narrows the one reading or fact that would narrow it most, as a sentence; may be empty
 */
public record TankPage(
        String title, String backText, String backTo, String school, String about, List<Link> doors, String saved,
        String code, List<Advice> advice, String together, List<String> tasks,
        List<Sentence> reasons, WaysPicture ways, String narrows,
        Season season, List<Fact> facts, List<LogRow> log, List<Link> takenBack, boolean mayLog,
        boolean mayCount, boolean inCharge) implements Page {

    /**
     * @param caution stands inside the box, at its act; may be empty
     * @param effect what it is expected to do by itself; may be empty
     */
    public record Advice(String act, String how, String caution, String effect) {
        public Advice(String act, String how, String caution) {
            this(act, how, caution, "");
        }

        public Advice withEffect(String words) {
            return new Advice(act, how, caution, words);
        }
    }

    public record Link(String text, String to) {}

    public record Sentence(String lead, String rest) {}

    /** @param basis who said so, when it was read, or that nobody said */
    public record Fact(String name, String text, String basis) {}

    /**
     * @param days the dates under the pictures
     * @param events marks under the pictures, at per cent from the left
     * @param spans other stretches of time to look at
     * @param numbers the same as a table
     */
    public record Season(
            List<SeasonChart> charts, List<SeasonChart.Tick> days, List<Event> events, List<Span> spans,
            String caption, Numbers numbers) {

        public String eventsInWords() {
            return events.stream().map(Event::text).collect(Collectors.joining("; "));
        }
    }

    /** @param sign a character for its sort; {@code text} says what it is */
    public record Event(String at, String sign, String text) {}

    public record Span(String text, String to, boolean here) {}

    public record Numbers(List<String> columns, List<NumbersRow> rows) {}

    public record NumbersRow(String when, List<String> cells) {}

    /**
     * A reading, or all that a device read in a day.
     *
     * @param marks doubts and corrections; may be empty
     * @param to where it is corrected, or each reading of the day stands; may be empty
     * @param toText the words that lead there
     * @param course path data of the day's hourly means; empty for a reading
     */
    public record LogRow(
            String when, String by, String values, String note, String marks, String to, String toText,
            String course) {}

    public String logTo() {
        return "/tanks/" + code + "/log";
    }

    public String classTo() {
        return "/tanks/" + code + "/class";
    }

    public String cardTo() {
        return "/tanks/" + code + "/card";
    }

    public String countTo() {
        return "/tanks/" + code + "/count";
    }

    public String filesTo() {
        return "/tanks/" + code + "/files";
    }

    public String seriesTo() {
        return "/tanks/" + code + "/series.json";
    }
}
