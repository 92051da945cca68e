package org.tankrounds.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tankrounds.pages.CountPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;
import org.tankrounds.web.Speech;

/** From a tank's account to the words and numbers of its page. */
final class CountPages {
    private static final String PLUS = "+";
    private static final String MINUS = "\u2212";

    private final Season season;
    private final Tank tank;
    private final Map<LocalDate, DeathCause> causes;
    private final Eggs eggs;
    private final LineWording wording;
    private final Formats formats;
    private final Speech speech;

    /**
     * What is known of the lots beside their numbers.
     *
     * @param ofReceipts lots that a receipt takes back
     * @param withdrawn of the tank, taken away as mistakes
     */
    record Eggs(Set<Integer> ofReceipts, List<WithdrawnLot> withdrawn) {}

    /**
     * @param causes what the dead of a day are put down to
     * @param tanks all of the chapter, to name where moved fish came from
     */
    CountPages(Season season, Tank tank, Map<LocalDate, DeathCause> causes, Eggs eggs, List<Tank> tanks,
            Formats formats) {
        this.eggs = eggs;
        this.causes = causes;
        this.season = season;
        this.tank = tank;
        this.formats = formats;
        this.speech = formats.speech();
        this.wording = new LineWording(
                tanks.stream().collect(Collectors.toMap(Tank::tankId, Function.identity())), speech);
    }

    /** @param mayMove whether there is another tank that the reader may move fish to */
    CountPage page(Account account, String address, Role role, boolean mayMove, String saved) {
        Ledger ledger = account.ledger();
        List<CountPage.Act> acts = Stream.of(CountKind.values())
                .filter(kind -> mayMove || kind != CountKind.MOVED)
                .map(kind -> new CountPage.Act(say("count.kind." + kind.code() + ".act"), address + "/" + kind.code()))
                .toList();
        return new CountPage(title(account), say("season.named", season.name()),
                role == Role.COORDINATOR ? "/season/" + season.code() : "", tank.school() + ", " + tank.classroom(),
                "/tanks/" + tank.code(), saved.isEmpty() ? "" : say("count.saved." + saved), figures(account),
                ledger.unexplained() == 0 ? "" : say(ledger.unexplained() > 0 ? "count.missing" : "count.surplus",
                        Math.abs(ledger.unexplained())),
                ledger.came() > 0 && ledger.alive() == 0 && runs() ? say("count.emptied") : "",
                acts, rows(account, address, role), eggs.withdrawn().stream().map(this::gone).toList());
    }

    /** What is to be done with an empty tank is of no use once its season is over. */
    private boolean runs() {
        return formats.now().isBefore(season.until(tank.zone()));
    }

    private String gone(WithdrawnLot gone) {
        return say("count.gone.lot", gone.lot().eggs(), formats.shortDate(gone.lot().receivedAt()), gone.by(),
                formats.dateAndClock(gone.at()), gone.because());
    }

    private String title(Account account) {
        Ledger ledger = account.ledger();
        if (ledger.received() + ledger.movedIn() == 0) {
            return say("count.title.none", tank.classroom());
        }
        return account.spread() == 0 ? say("count.title", tank.classroom(), ledger.alive())
                : say("count.title.about", tank.classroom(), ledger.alive(), account.spread());
    }

    private List<CountPage.Figure> figures(Account account) {
        Ledger ledger = account.ledger();
        List<CountPage.Figure> figures = new ArrayList<>();
        figures.add(figure("received", ledger.received()));
        addIfAny(figures, "movedIn", ledger.movedIn());
        figures.add(figure("dead", ledger.dead()));
        addIfAny(figures, "movedOut", ledger.movedOut());
        addIfAny(figures, "thinned", ledger.thinned());
        addIfAny(figures, "released", ledger.released());
        figures.add(figure("alive", ledger.alive()));
        addIfAny(figures, "unexplained", ledger.unexplained());
        return figures;
    }

    private void addIfAny(List<CountPage.Figure> figures, String what, int fish) {
        if (fish != 0) {
            figures.add(figure(what, fish));
        }
    }

    private CountPage.Figure figure(String what, int fish) {
        return new CountPage.Figure(say("count.figure." + what), signed(fish, ""));
    }

    /** The newest first; the dead of one day are one row. */
    private List<CountPage.Row> rows(Account account, String address, Role role) {
        List<CountPage.Row> rows = new ArrayList<>();
        List<Account.Line> dead = new ArrayList<>();
        for (Account.Line line : account.lines()) {
            if (!dead.isEmpty() && !(line.what() == Account.What.DIED && day(line).equals(day(dead.get(0))))) {
                rows.add(0, ofDay(dead, address, role));
                dead.clear();
            }
            if (line.what() != Account.What.DIED) {
                rows.add(0, row(line, address, role));
            } else if (line.fish() > 0) {
                dead.add(line);
            }
        }
        if (!dead.isEmpty()) {
            rows.add(0, ofDay(dead, address, role));
        }
        return rows;
    }

    private CountPage.Row ofDay(List<Account.Line> dead, String address, Role role) {
        Account.Line last = dead.get(dead.size() - 1);
        int fish = dead.stream().mapToInt(Account.Line::fish).sum();
        int surplus = dead.stream().mapToInt(Account.Line::surplus).sum();
        return row(new Account.Line(last.at(), last.what(), fish, last.entry(), last.lot(), last.left(), last.spread(),
                surplus), address, role);
    }

    private LocalDate day(Account.Line line) {
        return line.at().atZone(tank.zone()).toLocalDate();
    }

    private CountPage.Row row(Account.Line line, String address, Role role) {
        String undo = line.entry().map(entry -> address + "/entries/" + entry.entryId() + "/withdrawn").orElse("");
        return new CountPage.Row(formats.shortDate(line.at()), wording.what(line), detail(line), change(line),
                line.spread() == 0 ? Integer.toString(line.left())
                        : say("count.about", line.left(), line.spread()), undo,
                line.what() == Account.What.DIED ? address + "/deaths/" + day(line) : "",
                role == Role.COORDINATOR ? line.lot().filter(lot -> !eggs.ofReceipts().contains(lot.lotId()))
                        .map(lot -> address + "/lots/" + lot.lotId() + "/withdrawn").orElse("") : "");
    }

    private String detail(Account.Line line) {
        List<String> parts = new ArrayList<>();
        line.entry().ifPresent(entry -> {
            entry.stage().ifPresent(stage -> parts.add(say("count.stage.moved." + MovedAs.code(stage))));
            if (entry.method() != CountMethod.ONE_BY_ONE) {
                parts.add(say("count.method." + entry.method().code()));
            }
            entry.approval().ifPresent(number -> parts.add(say("count.line.approval", number)));
            entry.note().ifPresent(parts::add);
            entry.by().ifPresent(parts::add);
        });
        line.lot().filter(lot -> eggs.ofReceipts().contains(lot.lotId()))
                .ifPresent(lot -> parts.add(say("count.line.receipt")));
        if (line.what() == Account.What.DIED && causes.containsKey(day(line))) {
            parts.add(say("count.cause." + causes.get(day(line)).code()));
        }
        wording.unexplained(line).ifPresent(words -> parts.add(0, words));
        return String.join(" · ", parts);
    }

    private static String change(Account.Line line) {
        return switch (line.what()) {
            case RECEIVED, MOVED_IN -> PLUS + line.fish();
            case DIED, MOVED_OUT, THINNED, RELEASED -> line.fish() == 0 ? "0" : MINUS + line.fish();
            case HATCHED -> "";
            case COUNTED -> line.surplus() == 0 ? "" : signed(line.surplus(), PLUS);
        };
    }

    private static String signed(int fish, String plus) {
        return fish < 0 ? MINUS + -fish : plus + fish;
    }

    private String say(String key, Object... with) {
        return speech.say(key, with);
    }
}
