package org.tankrounds.season;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jooq.DSLContext;
import org.tankrounds.fish.Stage;
import org.tankrounds.places.Tank;
import org.tankrounds.words.Saying;

/** The counts of a season's tanks within one transaction: read, written to, and put right. */
public final class CountBook {
    private final SeasonReads reads;
    private final DSLContext tx;
    private final int chapterId;
    private final Season season;
    private final Instant now;
    private final Map<Integer, LotHistory> histories = new HashMap<>();

    public CountBook(SeasonReads reads, DSLContext tx, int chapterId, Season season, Instant now) {
        this.reads = reads;
        this.tx = tx;
        this.chapterId = chapterId;
        this.season = season;
        this.now = now;
    }

    public Account account(Tank tank) {
        return account(tank, entries());
    }

    /** As it would stand if a lot had never come. */
    Account accountWithout(Tank tank, Lot lot) {
        return history(tank).without(lot).account(CountRepository.of(tank.tankId(), entries()));
    }

    /** How far what is in the tank has come by now. */
    Stage stage(Tank tank) {
        return history(tank).movedAs(now, CountRepository.of(tank.tankId(), entries()), Optional.empty()).stage();
    }

    /** What stands already of the same kind and day of a tank; nothing where this form was written down before. */
    public SameDay ofTheSameDay(Tank tank, UUID submissionId, CountEntry entry) {
        reads.tanks().lock(tx, chapterId, tanksOf(entry));
        if (reads.counts().writtenBy(tx, chapterId, tank.tankId(), submissionId).isPresent()) {
            return new SameDay(List.of());
        }
        LocalDate day = LocalDate.ofInstant(entry.at(), tank.zone());
        return new SameDay(entries().stream()
                .filter(one -> one.kind() == entry.kind() && one.tankId() == tank.tankId()
                        && LocalDate.ofInstant(one.at(), tank.zone()).equals(day)).toList());
    }

    /** Whether the form was not written down before; nobody else writes of the tank until the transaction ends. */
    boolean isNew(Tank tank, UUID submissionId, CountEntry entry) {
        reads.tanks().lock(tx, chapterId, tanksOf(entry));
        return reads.counts().writtenBy(tx, chapterId, tank.tankId(), submissionId).isEmpty();
    }

    /** @return why it cannot be; empty where it was written, or stands there already by the same form */
    public Optional<Saying> write(Tank tank, UUID submissionId, CountEntry entry, int personId) {
        reads.tanks().lock(tx, chapterId, tanksOf(entry));
        List<CountEntry> before = entries();
        Optional<Integer> written = reads.counts().writtenBy(tx, chapterId, tank.tankId(), submissionId);
        if (written.isPresent()) {
            boolean isSame = before.stream().anyMatch(one -> one.entryId() == written.get() && one.saysAs(entry));
            return isSame ? Optional.empty() : Optional.of(Saying.of("count.form.used"));
        }
        CountEntry known = entry.kind() == CountKind.MOVED ? entry.as(history(tank).movedAs(
                entry.at(), CountRepository.of(tank.tankId(), before), entry.stage())) : entry;
        List<CountEntry> after = new ArrayList<>(before);
        after.add(known);
        Set<CountEntry> wrong = newlyImpossible(known, before, after);
        if (!wrong.isEmpty()) {
            return Optional.of(wrong.contains(known) ? tooMany(tank, entry, before)
                    : Saying.of("count.fish.neededLater"));
        }
        reads.counts().add(tx, chapterId, season.seasonId(), submissionId, known, personId, now);
        return Optional.empty();
    }

    /** @return false where what was written down after it could then not have been; nothing is changed */
    boolean withdraw(CountEntry entry, int personId) {
        reads.tanks().lock(tx, chapterId, tanksOf(entry));
        List<CountEntry> before = entries();
        List<CountEntry> without = before.stream().filter(one -> one.entryId() != entry.entryId()).toList();
        if (!newlyImpossible(entry, before, without).isEmpty()) {
            return false;
        }
        reads.counts().withdraw(tx, chapterId, entry.entryId(), personId, now);
        return true;
    }

    Optional<CountEntry> find(Tank tank, OptionalInt entryId) {
        return CountRepository.of(tank.tankId(), entries()).stream()
                .filter(entry -> entryId.isPresent() && entry.entryId() == entryId.getAsInt()).findFirst();
    }

    /** The tank, and the one that fish were moved to. */
    static List<Integer> tanksOf(CountEntry entry) {
        return Stream.concat(Stream.of(entry.tankId()), entry.toTankId().stream()).toList();
    }

    /** More cannot leave a tank than can have been there: not by the entry, nor by what was written down after it. */
    private Set<CountEntry> newlyImpossible(CountEntry entry, List<CountEntry> before, List<CountEntry> after) {
        Set<CountEntry> wrong = new HashSet<>();
        for (int tankId : tanksOf(entry)) {
            Tank tank = reads.tanks().findById(tx, chapterId, tankId).orElseThrow();
            wrong.addAll(account(tank, after).impossible());
            wrong.removeAll(account(tank, before).impossible());
        }
        return wrong;
    }

    /** What the tank's count was at the time of an entry that is not written yet. */
    Account accountAt(Tank tank, CountEntry entry) {
        return history(tank).accountUntil(entry.at(), CountRepository.of(tank.tankId(), entries()));
    }

    private Saying tooMany(Tank tank, CountEntry entry, List<CountEntry> before) {
        Account then = history(tank).accountUntil(entry.at(), CountRepository.of(tank.tankId(), before));
        return then.spread() == 0 ? Saying.of("count.fish.tooMany", then.ledger().alive())
                : Saying.of("count.fish.tooManyAbout", then.ledger().alive(), then.spread());
    }

    private Account account(Tank tank, List<CountEntry> entries) {
        return history(tank).account(CountRepository.of(tank.tankId(), entries));
    }

    private LotHistory history(Tank tank) {
        return histories.computeIfAbsent(tank.tankId(), tankId -> LotHistory.of(tank,
                reads.lots().listOfTank(tx, chapterId, season.seasonId(), tankId),
                reads.observations().list(
                        tx, chapterId, tankId, season.from(tank.zone()), season.until(tank.zone())), now));
    }

    private List<CountEntry> entries() {
        return reads.counts().list(tx, chapterId, season.seasonId());
    }
}
