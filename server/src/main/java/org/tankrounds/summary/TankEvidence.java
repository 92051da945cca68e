package org.tankrounds.summary;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.places.Tank;
import org.tankrounds.readings.ReadingTally;
import org.tankrounds.release.ReleaseDay;
import org.tankrounds.season.Account;
import org.tankrounds.season.CountEntry;
import org.tankrounds.season.DeathCause;
import org.tankrounds.season.DeathCauses;
import org.tankrounds.season.Lot;
import org.tankrounds.season.LotHistory;
import org.tankrounds.season.Survivors;
import org.tankrounds.tasks.Task;
import org.tankrounds.tasks.TaskTally;
import org.tankrounds.visits.Visit;
import org.tankrounds.water.Analyte;

/** What is known of one tank in a season: the rows that its figures are made of. */
final class TankEvidence {

    /** The dead of a day in one stage of life. */
    record Deaths(LocalDate day, Stage stage, int fish, Optional<DeathCause> cause) {}

    private final Tank tank;
    private final List<Lot> lots;
    private final int eggsToCome;
    private final List<CountEntry> entries;
    private final Map<LocalDate, DeathCause> causes;
    private final List<Task> tasks;
    private final List<Visit> visits;
    private final List<Observation> seen;
    private final ReadingTally readings;
    private final Map<Integer, ReleaseDay> atTheWater;
    private final LotHistory history;
    private final Account account;
    private final LimitDays days;
    private final Map<Integer, Integer> letGo;

    /**
     * @param entries of this tank, and those by which fish came to it
     * @param seen in the season, oldest first
     * @param atTheWater what was written down at releases, by the number of the entry; of other tanks too
     * @param asOf now, or the end of the season where that is over: eggs that are to come later are not there yet
     * @param letGo how many of each move can have left where they were, by the number of its entry; else all
     */
    TankEvidence(Tank tank, List<Lot> lots, List<CountEntry> entries, Map<LocalDate, DeathCause> causes,
            List<Task> tasks, List<Visit> visits, List<Observation> seen, ReadingTally readings,
            Map<Integer, ReleaseDay> atTheWater, Instant asOf, Map<Integer, Integer> letGo) {
        this.tank = tank;
        this.lots = lots.stream().filter(lot -> lot.hasCome(asOf, tank.zone())).toList();
        this.eggsToCome = lots.stream().filter(lot -> !lot.hasCome(asOf, tank.zone())).mapToInt(Lot::eggs).sum();
        this.entries = entries;
        this.causes = causes;
        this.tasks = tasks;
        this.visits = visits;
        this.seen = seen;
        this.readings = readings;
        this.atTheWater = atTheWater;
        this.letGo = letGo;
        this.history = LotHistory.of(tank, this.lots, seen, asOf).with(entries);
        this.account = history.account(entries);
        this.days = new LimitDays(tank, history, seen, Limits.DEFAULT);
    }

    Tank tank() {
        return tank;
    }

    List<Lot> lots() {
        return lots;
    }

    Account account() {
        return account;
    }

    LimitDays days() {
        return days;
    }

    List<Task> tasks() {
        return tasks;
    }

    /** The newest first. */
    List<Visit> visits() {
        return visits;
    }

    Figures figures() {
        return new Figures(account.ledger(), Survivors.of(account.ledger()), deliveries(), eggsToCome,
                account.hatched(),
                DeathCauses.of(account.lines(), causes, tank.zone()), readings, days.of(Series.TEMPERATURE),
                days.of(Series.UN_IONISED_AMMONIA), days.of(Series.NITRITE), stages(), tally(), visits.size(),
                waterChanges().size(),
                releases());
    }

    private List<Delivery> deliveries() {
        return lots.stream().map(lot -> new Delivery(day(lot.receivedAt()), tank.room().schoolCode(), tank.school(),
                tank.classroom(), tank.code(), lot.eggs(), lot.spread(), lot.method(), lot.thermalUnitsC(),
                lot.supplier(), lot.certificate())).sorted(Delivery.BY_DAY).toList();
    }

    Stages stages() {
        return course().map(course -> Stages.of(course, letGo)).orElse(Stages.NONE);
    }

    /** Empty where nobody can say which of them died. */
    Optional<Stages.Course> course() {
        return history.isMixed() ? Optional.empty()
                : Optional.of(Stages.Course.of(account.lines(), history::stageAt, lastKnown()));
    }

    /** The dead by day and stage, oldest first. */
    List<Deaths> deaths() {
        SortedMap<LocalDate, SortedMap<Stage, Integer>> dead = new TreeMap<>();
        account.lines().stream().filter(line -> line.what() == Account.What.DIED && line.fish() > 0)
                .forEach(line -> dead.computeIfAbsent(day(line.at()), day -> new TreeMap<>())
                        .merge(history.stageAt(line.at()), line.fish(), Integer::sum));
        List<Deaths> deaths = new ArrayList<>();
        dead.forEach((day, stages) -> stages.forEach((stage, fish) ->
                deaths.add(new Deaths(day, stage, fish, Optional.ofNullable(causes.get(day))))));
        return deaths;
    }

    List<Release> releases() {
        return account.lines().stream().filter(line -> line.what() == Account.What.RELEASED)
                .map(line -> release(line.entry().orElseThrow())).sorted(Release.BY_SITE_AND_DATE).toList();
    }

    /** Each with its share of the water, %. */
    List<Observation> waterChanges() {
        return seen.stream().filter(one -> one.analyte() == Analyte.WATER_CHANGE && one.value() > 0).toList();
    }

    LocalDate day(Instant at) {
        return at.atZone(tank.zone()).toLocalDate();
    }

    private TaskTally tally() {
        int asked = (int) tasks.stream().filter(task -> task.act().isEmpty()).count();
        int done = (int) tasks.stream().filter(task -> task.act().isEmpty() && !task.isOpen()).count();
        return new TaskTally(asked, done, tasks.size() - asked);
    }

    private Release release(CountEntry entry) {
        return new Release(entry.entryId(), entry.place().orElse(""), entry.approval().orElse(""), day(entry.at()),
                tank.room().schoolCode(), tank.school(), tank.classroom(), tank.code(), entry.fish(), entry.spread(),
                entry.method(), temperatureNear(entry.at()), Optional.ofNullable(atTheWater.get(entry.entryId())));
    }

    private OptionalDouble temperatureNear(Instant at) {
        return seen.stream()
                .filter(one -> one.analyte() == Analyte.TEMPERATURE && !one.doubtful() && day(one.at()).equals(day(at)))
                .min(Comparator.comparing((Observation one) -> Duration.between(one.at(), at).abs())
                        .thenComparing(Observation::at))
                .map(one -> OptionalDouble.of(one.value())).orElse(OptionalDouble.empty());
    }

    /** The summary has no clock: what is not known of a tank has not come. */
    private Instant lastKnown() {
        return Stream.concat(seen.stream().skip(Math.max(0, seen.size() - 1)).map(Observation::at),
                        Stream.concat(entries.stream().map(CountEntry::at), lots.stream().map(Lot::receivedAt)))
                .max(Comparator.naturalOrder()).orElse(Instant.EPOCH);
    }
}
