package org.tankrounds.summary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.tankrounds.pages.FormPage.Link;
import org.tankrounds.season.Ledger;
import org.tankrounds.web.Speech;

/** What an agency would ask about a summary; it may be frozen nonetheless. */
final class StillOpen {
    private final SeasonSummary summary;
    private final Speech speech;

    StillOpen(SeasonSummary summary, Speech speech) {
        this.summary = summary;
        this.speech = speech;
    }

    /** Each leads to where it can be looked at. */
    List<Link> list(LocalDate today) {
        String address = "/season/" + summary.heading().seasonCode() + "/summary";
        Ledger ledger = summary.chapter().figures().ledger();
        List<Link> open = new ArrayList<>();
        if (!today.isAfter(summary.heading().endsOn())) {
            open.add(new Link(speech.say("freeze.open.season",
                    speech.written("time.pattern.dateAndYear", summary.heading().endsOn())), address));
        }
        if (tanks(tank -> tank.unexplained() != 0) > 0) {
            open.add(new Link(speech.say("freeze.open.unexplained", tanks(tank -> tank.unexplained() != 0)),
                    address + "/rows/" + SummaryFigure.UNEXPLAINED.code()));
        }
        int toCome = summary.chapter().figures().eggsToCome();
        if (toCome > 0) {
            open.add(new Link(speech.say("freeze.open.toCome", toCome),
                    "/season/" + summary.heading().seasonCode()));
        }
        if (ledger.alive() > 0) {
            open.add(new Link(speech.say("freeze.open.alive", ledger.alive()),
                    address + "/rows/" + SummaryFigure.ALIVE.code()));
        }
        int without = tanks(tank -> tank.came() > 0 && tank.released() == 0);
        if (without > 0) {
            open.add(new Link(speech.say("freeze.open.release", without),
                    address + "/rows/" + SummaryFigure.RELEASED.code()));
        }
        int unapproved = (int) summary.chapter().figures().releases().stream()
                .filter(release -> release.approval().isEmpty()).count();
        if (unapproved > 0) {
            open.add(new Link(speech.say("freeze.open.approval", unapproved),
                    address + "/rows/" + SummaryFigure.RELEASED.code()));
        }
        return open;
    }

    private int tanks(Predicate<Ledger> which) {
        return (int) summary.tanks().stream().map(tank -> tank.figures().ledger()).filter(which).count();
    }
}
