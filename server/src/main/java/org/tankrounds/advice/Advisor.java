package org.tankrounds.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tankrounds.belief.Observation;
import org.tankrounds.forecast.Deed;
import org.tankrounds.forecast.Driver;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.LookAhead;
import org.tankrounds.forecast.MassDeaths;
import org.tankrounds.forecast.Prospect;
import org.tankrounds.forecast.Reason;

/**
 * What to bring and do for a tank, by the reasons of its forecast from the weightiest on, each act tried on its
 * courses: what does harm there is not advised but for breath and the fast, and what does next to nothing is left
 * out. Decision support for
 * volunteers; it is no veterinary, legal or electrical advice, and an agency's instruction outranks it.
 */
public final class Advisor {

    private static final double MATTERS = 0.1;
    /** From this share of a limit on it is near; water is hauled only against what is beyond it. */
    private static final double NEAR = 0.9;
    private static final double EASES_TO = 0.9;
    /** From this chance on a tank is gone to within the week. */
    public static final double WORRYING_CHANCE = 0.2;

    private final Trusts trusts;

    /** Trusts what the courses show as far as it came true in simulated seasons. */
    public Advisor() {
        this(Trusts.shipped());
    }

    public Advisor(Trusts trusts) {
        this.trusts = trusts;
    }

    /** The acts that the forecast calls for; empty for a tank that needs nothing. */
    public Advice advise(LookAhead ahead, List<Observation> noted) {
        List<Observation> observations = Observation.asFarAsCredible(noted);
        List<Tried> kept = breathFirst(ahead.withoutChlorine()
                .map(without -> againstChlorine(ahead, without, observations))
                .orElseGet(() -> calledFor(ahead, observations)));
        List<Tried> inConcert = Breath.bearable(ahead, Together.inConcert(ahead, kept).acts());
        Together together = Together.of(ahead, Harmony.of(inConcert));
        return new Advice(together.acts().stream().map(Tried::remedy).toList(),
                together.promised(trusts.in(Trusts.Sort.ALL_TOGETHER)));
    }

    private List<Tried> calledFor(LookAhead ahead, List<Observation> observations) {
        List<Tried> kept = Harmony.of(worthDoing(ahead, withoutRepeats(proposals(ahead, observations))));
        if (isAnswered(ahead.forecast(), kept)) {
            return kept;
        }
        List<Proposal> left = LastResort.against(troubleOf(ahead.forecast()), ahead, observations);
        return worthDoing(ahead, withoutRepeats(
                Stream.concat(kept.stream().map(Tried::proposal), left.stream()).toList()));
    }

    /**
     * To withhold feed alone is no answer; and alkalinity that is used up asks for one of its own, which salt before
     * it is not.
     */
    private static boolean isAnswered(Forecast forecast, List<Tried> kept) {
        boolean isLow = forecast.reasons().stream().anyMatch(Advisor::isAlkalinityLow);
        return !isWorrying(forecast) || kept.stream().map(each -> each.proposal().act())
                .filter(act -> act.kind() != Act.Kind.SKIP_FEED)
                .anyMatch(act -> !isLow || act.isAgainst(Driver.PH) && act.kind() != Act.Kind.SALT);
    }

    /** Chlorine is beyond on every course; so what else is called for is judged on those without it. */
    private List<Tried> againstChlorine(LookAhead ahead, LookAhead without, List<Observation> observations) {
        List<Proposal> against = proposals(ahead, observations).stream()
                .filter(each -> each.act().isAgainst(Driver.CHLORINE)).toList();
        Stream<Tried> beside = calledFor(without, observations).stream()
                .map(kept -> tried(ahead, kept.proposal()));
        return Stream.concat(worthDoing(ahead, against).stream(), beside).toList();
    }

    /** Fish that cannot breathe die within the hour. */
    private static List<Tried> breathFirst(List<Tried> kept) {
        return kept.stream().sorted(Comparator.comparing(each -> !each.proposal().isForBreath())).toList();
    }

    private List<Tried> worthDoing(LookAhead ahead, List<Proposal> proposals) {
        Forecast forecast = ahead.forecast();
        return proposals.stream().map(proposal -> tried(ahead, proposal)).filter(Tried::isSafe)
                .filter(tried -> tried.proposal().isForesight() || easesItsLimit(ahead, tried.proposal())
                        || Worth.isWorthDoing(tried.proposal().act(), tried.effect(), forecast.driver(),
                                isWorrying(forecast)))
                .toList();
    }

    /** What helps against a limit that is near or passed, where another is so far beyond that all else looks small. */
    private static boolean easesItsLimit(LookAhead ahead, Proposal proposal) {
        Driver limit = proposal.driver();
        if (proposal.deed().isEmpty() || limit == Driver.DEATHS || limit == Driver.SILENCE) {
            return false;
        }
        double without = ahead.highU(proposal.beside(), limit);
        double from = proposal.act().kind() == Act.Kind.WATER_CHANGE ? 1 : NEAR;
        return without > from && ahead.highU(proposal.beside().and(proposal.deed().get()), limit) <= EASES_TO * without;
    }

    private Tried tried(LookAhead ahead, Proposal proposal) {
        double standsChance = ahead.belief().temperature().stoppedChance();
        Optional<Prospect> prospect = proposal.shown(ahead);
        boolean isSafe = prospect.map(shown -> Worth.isSafe(proposal.act(), shown) && proposal.isBorne(shown, ahead))
                .orElse(true);
        return new Tried(proposal, isSafe, prospect.map(Prospect::effect), prospect.map(shown ->
                trusts.in(Trusts.Sort.of(proposal.act(), standsChance)).in(shown.effect())));
    }

    private static List<Proposal> proposals(LookAhead ahead, List<Observation> observations) {
        Proposals proposals = new Proposals(ahead, observations);
        proposals.addWhatPresses();
        for (Reason reason : ahead.forecast().reasons()) {
            if (reason.driver().isPresent() && (reason.share() >= MATTERS || isAlkalinityLow(reason))) {
                proposals.add(reason);
            }
        }
        return proposals.all();
    }

    /** Nobody is sent to such a tank with nothing to do. */
    private static boolean isWorrying(Forecast forecast) {
        return forecast.chance() >= WORRYING_CHANCE || forecast.hoursToLimit().orElse(1) == 0
                || MassDeaths.in(forecast) || forecast.reasons().stream().anyMatch(Advisor::isAlkalinityLow);
    }

    private static Driver troubleOf(Forecast forecast) {
        return forecast.reasons().stream().anyMatch(Advisor::isAlkalinityLow) ? Driver.PH : forecast.driver();
    }

    /** It has to be brought back before it shows in the pH. */
    private static boolean isAlkalinityLow(Reason reason) {
        return reason.kind() == Reason.Kind.ALKALINITY_LOW;
    }

    /** One act of a kind, the first and so the largest cause's; of water changes the largest. */
    private static List<Proposal> withoutRepeats(List<Proposal> proposals) {
        List<Proposal> kept = new ArrayList<>();
        for (Proposal proposal : proposals) {
            int same = -1;
            for (int i = 0; i < kept.size(); i++) {
                same = kept.get(i).isLike(proposal) ? i : same;
            }
            if (same < 0) {
                kept.add(proposal);
            } else {
                kept.set(same, proposal.mergedWith(kept.get(same)));
            }
        }
        return kept;
    }
}
