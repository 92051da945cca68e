package org.tankrounds.rounds;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.MorningPage;
import org.tankrounds.pages.RoundsPage;
import org.tankrounds.rounds.PastMornings.Loaded;
import org.tankrounds.rounds.PastMornings.PastTank;
import org.tankrounds.web.Formats;

/** From a past morning to the page that prints it. Days are named as on that morning. */
final class MorningPages {
    private static final String FIELD = "asOf";

    private final Morning morning;
    private final Formats formats;
    private final Instant now;

    MorningPages(Morning morning, Instant now) {
        this.morning = morning;
        this.formats = new Formats(morning.zone(), morning.asOf());
        this.now = now;
    }

    /** The page without a board, where the day asked for cannot be shown. */
    static MorningPage refused(String typed, String sentence, Morning latest) {
        return new MorningPage("Past mornings", "", "", box(typed).withError(sentence),
                turn(latest, "‹ "), null, List.of());
    }

    MorningPage page(Loaded loaded, List<PastTank> tanks) {
        RoundsPage said = new RoundsPages(formats).page(board(tanks), "", "");
        Map<String, PastTank> byCode =
                tanks.stream().collect(Collectors.toMap(tank -> tank.tank().code(), Function.identity()));
        List<MorningPage.Group> groups = said.groups().stream().map(group -> new MorningPage.Group(
                group.key(), group.title(),
                group.rows().stream().map(row -> row(row, byCode.get(row.code()))).toList())).toList();
        boolean empty = groups.isEmpty();
        return new MorningPage(formats.full(morning.asOf()) + ": " + (empty ? "no rounds" : said.title()),
                empty ? why(loaded) : said.lead(), empty ? "" : score(tanks),
                box(morning.day().toString()), turn(morning.before(), "‹ "), after(), groups);
    }

    /** Of readings alone: what a class saw of its fish is of that day. */
    private static Board board(List<PastTank> tanks) {
        return Board.of(tanks.stream().map(PastTank::tank).toList(), tanks.stream()
                .collect(Collectors.toMap(tank -> tank.tank().tankId(), PastTank::forecast)), Map.of());
    }

    private static String score(List<PastTank> tanks) {
        return MorningScore.of(tanks.stream()
                .map(tank -> new MorningScore.Scored(isToGoTo(tank), tank.then())).toList());
    }

    private static boolean isToGoTo(PastTank tank) {
        Tier tier = Tier.of(tank.forecast().forecast());
        return tier == Tier.GO_TODAY || tier == Tier.GO_THIS_WEEK;
    }

    private MorningPage.Row row(RoundsPage.Row said, PastTank tank) {
        Phrase then = new AftermathWording(formats).of(tank.then(), tank.forecast().forecast());
        String bring = said.bring().isEmpty() ? "" : BringList.sentences(tank.forecast().acts());
        return new MorningPage.Row(said, bring, then.lead(), then.rest(), tank.then().wentBeyond());
    }

    private String why(Loaded past) {
        if (past.season().isPresent() || past.firstDay().isEmpty()) {
            return "No tank had eggs or a reading by that morning.";
        }
        return morning.day().isBefore(past.firstDay().get())
                ? "That was before the season: the first one here began on "
                        + Formats.fullDate(past.firstDay().get()) + "."
                : "No season was on that morning.";
    }

    private MorningPage.Turn after() {
        Morning after = morning.after();
        return after.asOf().isAfter(now) ? null : new MorningPage.Turn(label(after) + " ›", to(after));
    }

    private static MorningPage.Turn turn(Morning morning, String before) {
        return new MorningPage.Turn(before + label(morning), to(morning));
    }

    private static String label(Morning morning) {
        Formats formats = new Formats(morning.zone(), morning.asOf());
        return formats.weekday(morning.asOf()) + " " + formats.shortDate(morning.asOf());
    }

    static String to(Morning morning) {
        return "/rounds?" + FIELD + "=" + morning.day();
    }

    private static FormField box(String value) {
        return FormField.text(FIELD, "Another morning", value).withType("date", "off");
    }
}
