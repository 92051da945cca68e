package org.tankrounds.season;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;

/** The count of one tank in a season, line by line as it ran: what came, died, left and was counted again. */
public final class Account {

    /** What a line tells. */
    public enum What {
        RECEIVED, MOVED_IN, DIED, HATCHED, MOVED_OUT, THINNED, RELEASED, COUNTED
    }

    /**
     * @param fish how many the line tells of
     * @param entry what somebody wrote down; empty of eggs that came, and of deaths, which are read
     * @param lot the eggs that came; empty of all else
     * @param left fish alive by count after it
     * @param spread more or less that these may be, 95 %
     * @param surplus how many more left or died than were there by count; or, counted again, than the count said
     */
    public record Line(Instant at, What what, int fish, Optional<CountEntry> entry, Optional<Lot> lot, int left,
            int spread, int surplus) {}

    private record Booking(
            Instant at, What what, int fish, int spread, Optional<CountEntry> entry, Optional<Lot> lot) {}

    /** Of the same moment, what came and died before what was written down, and that in the order of writing. */
    private static final Comparator<Booking> IN_TIME = Comparator.comparing(Booking::at)
            .thenComparingInt(booking -> booking.entry().map(CountEntry::order).orElse(0))
            .thenComparing(Booking::what);

    private final List<Line> lines = new ArrayList<>();
    private final List<CountEntry> impossible = new ArrayList<>();
    private Ledger ledger = Ledger.EMPTY;
    private double cameVariance;
    private double variance;
    /** How many more left than were there by count, since all were counted. */
    private int overdrawn;
    private int leftAsEggs;

    private Account() {}

    /**
     * @param deaths as recorded, doubted or not: a count that nobody can repeat is not thrown away
     * @param stageAt how far the lot had come at a moment
     * @param entries of this tank, and those by which fish came to it
     * @param zone eggs are booked before all else of the day on which they came there
     */
    public static Account of(int tankId, List<Lot> lots, List<Observation> deaths, Function<Instant, Stage> stageAt,
            List<CountEntry> entries, ZoneId zone) {
        List<Booking> bookings = new ArrayList<>();
        lots.forEach(lot -> bookings.add(new Booking(lot.receivedAt().atZone(zone).toLocalDate().atStartOfDay(zone)
                .toInstant(), What.RECEIVED, lot.eggs(), lot.spread(), Optional.empty(), Optional.of(lot))));
        deaths.forEach(seen -> bookings.add(new Booking(
                seen.at(), What.DIED, (int) Math.round(seen.value()), 0, Optional.empty(), Optional.empty())));
        entries.forEach(entry -> bookings.add(booking(tankId, entry)));
        Account account = new Account();
        bookings.stream().sorted(IN_TIME).forEach(booking -> account.book(booking, stageAt));
        return account;
    }

    public List<Line> lines() {
        return List.copyOf(lines);
    }

    public Ledger ledger() {
        return ledger;
    }

    /** More or less that the living may be, 95 %. */
    public int spread() {
        return (int) Math.ceil(Math.sqrt(variance));
    }

    /** How many were counted as hatched. */
    public int hatched() {
        return lines.stream().filter(line -> line.what() == What.HATCHED).mapToInt(Line::fish).sum();
    }

    /**
     * Fish that can be there however few died: those that came, less those that left alive, and what both may be off.
     */
    public int most(int spreadOfCount) {
        return ledger.received() + ledger.movedIn() - ledger.movedOut() - ledger.thinned() - ledger.released()
                + spreadWith(spreadOfCount);
    }

    /**
     * Eggs that can have hatched beside those that were counted as hatched before: those that came, less those that
     * died or left as eggs, and what the counts may be off.
     */
    public int mostHatched(int spreadOfCount) {
        return ledger.received() + ledger.movedIn() - ledger.deadAsEggs() - leftAsEggs - hatched()
                + spreadWith(spreadOfCount);
    }

    /** Whether so many more hatched can be written down at all. */
    public boolean canHaveHatched(int fish, int spreadOfCount) {
        return hatched() + fish <= known() + Math.ceil(StrictMath.hypot(spread(), spreadOfCount));
    }

    /** Those that came, and what counts found beyond them: suppliers miscount. */
    private int known() {
        return ledger.came() + Math.max(0, -ledger.unexplained());
    }

    private int spreadWith(int spreadOfCount) {
        return (int) Math.ceil(StrictMath.hypot(Math.sqrt(cameVariance), spreadOfCount));
    }

    /** By which more left than can have been there. */
    public List<CountEntry> impossible() {
        return List.copyOf(impossible);
    }

    private static Booking booking(int tankId, CountEntry entry) {
        What what = switch (entry.kind()) {
            case MOVED -> entry.comesTo(tankId) ? What.MOVED_IN : What.MOVED_OUT;
            case THINNED -> What.THINNED;
            case RELEASED -> What.RELEASED;
            case COUNTED -> What.COUNTED;
            case HATCHED -> What.HATCHED;
        };
        return new Booking(entry.at(), what, entry.fish(), entry.spread(), Optional.of(entry), Optional.empty());
    }

    private void book(Booking booking, Function<Instant, Stage> stageAt) {
        int spreadBefore = spread();
        int fish = booking.fish();
        int unexplainedBefore = ledger.unexplained();
        ledger = switch (booking.what()) {
            case RECEIVED -> ledger.withReceived(fish);
            case MOVED_IN -> ledger.withMovedIn(fish);
            case DIED -> ledger.withDeaths(stageAt.apply(booking.at()), fish);
            case HATCHED -> ledger;
            case MOVED_OUT -> ledger.withMovedOut(fish);
            case THINNED -> ledger.withThinned(fish);
            case RELEASED -> ledger.withReleased(fish);
            case COUNTED -> ledger.withCounted(fish);
        };
        double own = (double) booking.spread() * booking.spread();
        variance = switch (booking.what()) {
            case HATCHED -> variance;
            case COUNTED -> own;
            default -> variance + own;
        };
        cameVariance += booking.what() == What.COUNTED || booking.what() == What.HATCHED ? 0 : own;
        Line line = new Line(booking.at(), booking.what(), fish, booking.entry(), booking.lot(),
                ledger.alive(), spread(), unexplainedBefore - ledger.unexplained());
        lines.add(line);
        overdrawn = switch (booking.what()) {
            case COUNTED -> 0;
            case MOVED_OUT, THINNED, RELEASED -> overdrawn + line.surplus();
            default -> overdrawn;
        };
        boolean leaves = booking.entry().filter(entry -> entry.kind().leaves()).isPresent()
                && booking.what() != What.MOVED_IN;
        leftAsEggs += leaves && stageAt.apply(booking.at()) == Stage.EGG ? fish : 0;
        booking.entry().filter(entry -> isImpossible(line, entry, spreadBefore)).ifPresent(impossible::add);
    }

    /** More left, or hatched, than can have been there, however far this count and those before it were off. */
    private boolean isImpossible(Line line, CountEntry entry, int spreadBefore) {
        double allowed = Math.ceil(StrictMath.hypot(spreadBefore, entry.spread()));
        return switch (line.what()) {
            case HATCHED -> hatched() > known() + allowed;
            case MOVED_OUT, THINNED, RELEASED -> line.surplus() > 0 && overdrawn > allowed;
            case RECEIVED, MOVED_IN, DIED, COUNTED -> false;
        };
    }
}
