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
import org.tankrounds.web.Speech;

/** From a past morning to the page that prints it. Days are named as on that morning. */
final class MorningPages {
    private static final String FIELD = "asOf";

    private final Morning morning;
    private final Formats formats;
    private final Speech speech;
    private final Instant now;

    MorningPages(Morning morning, Speech speech, Instant now) {
        this.morning = morning;
        this.formats = speech.formats(morning.zone(), morning.asOf());
        this.speech = speech;
        this.now = now;
    }

    /** The page without a board, where the day asked for cannot be shown; the morning is the latest one. */
    MorningPage refused(String typed, Morning.NoSuchMorning no) {
        String past = speech.say("morning.past");
        return new MorningPage(speech.titled(true, past), past, "", "", box(typed).withError(no.sentence(formats)),
                turn(morning, "‹ "), null, List.of());
    }

    MorningPage page(Loaded loaded, List<PastTank> tanks) {
        RoundsPage said = new RoundsPages(formats).page(board(tanks), "", "", List.of());
        Map<String, PastTank> byCode =
                tanks.stream().collect(Collectors.toMap(tank -> tank.tank().code(), Function.identity()));
        List<MorningPage.Group> groups = said.groups().stream().map(group -> new MorningPage.Group(
                group.key(), group.title(),
                group.rows().stream().map(row -> row(row, byCode.get(row.code()))).toList())).toList();
        boolean empty = groups.isEmpty();
        String answer = speech.say("morning.title", formats.full(morning.asOf()),
                empty ? speech.say("morning.noRounds") : said.title());
        return new MorningPage(answer, answer,
                empty ? why(loaded) : said.lead(), empty ? "" : score(tanks),
                box(morning.day().toString()), turn(morning.before(), "‹ "), after(), groups);
    }

    /** Of readings alone: what a class saw of its fish is of that day. */
    private static Board board(List<PastTank> tanks) {
        return Board.of(tanks.stream().map(PastTank::tank).toList(), tanks.stream()
                .collect(Collectors.toMap(tank -> tank.tank().tankId(), PastTank::forecast)), Map.of(), Map.of());
    }

    private String score(List<PastTank> tanks) {
        return MorningScore.of(tanks.stream()
                .map(tank -> new MorningScore.Scored(isToGoTo(tank), tank.then())).toList(), speech);
    }

    private static boolean isToGoTo(PastTank tank) {
        Tier tier = Tier.of(tank.forecast().forecast());
        return tier == Tier.GO_TODAY || tier == Tier.GO_THIS_WEEK;
    }

    private MorningPage.Row row(RoundsPage.Row said, PastTank tank) {
        Phrase then = new AftermathWording(formats).of(tank.then(), tank.forecast().forecast());
        String bring = said.bring().isEmpty() ? "" : new BringList(speech).sentences(tank.forecast().acts());
        return new MorningPage.Row(said, bring, then.lead(), then.rest(), tank.then().wentBeyond());
    }

    private String why(Loaded past) {
        if (past.season().isPresent() || past.firstDay().isEmpty()) {
            return speech.say("morning.noTank");
        }
        return morning.day().isBefore(past.firstDay().get())
                ? speech.say("morning.beforeSeason", formats.longDate(past.firstDay().get()))
                : speech.say("morning.noSeason");
    }

    private MorningPage.Turn after() {
        Morning after = morning.after();
        return after.asOf().isAfter(now) ? null : new MorningPage.Turn(label(after) + " ›", to(after));
    }

    private MorningPage.Turn turn(Morning morning, String before) {
        return new MorningPage.Turn(before + label(morning), to(morning));
    }

    private String label(Morning morning) {
        return formats.weekday(morning.asOf()) + " " + formats.shortDate(morning.asOf());
    }

    static String to(Morning morning) {
        return "/rounds?" + FIELD + "=" + morning.day();
    }

    private FormField box(String value) {
        return FormField.text(FIELD, speech.say("morning.another"), value).withType("date", "off");
    }
}
