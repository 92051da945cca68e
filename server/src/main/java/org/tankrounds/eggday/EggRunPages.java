package org.tankrounds.eggday;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.tankrounds.eggday.CoolerCheck.Comfort;
import org.tankrounds.fish.Stage;
import org.tankrounds.pages.CountPage.Figure;
import org.tankrounds.pages.EggRunPage;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.transport.Tempering;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;

/** From an egg day to the words and numbers of its page. */
final class EggRunPages {
    private final KnownRun known;
    private final EggWording wording;
    private final Formats formats;

    /** @param formats on the chapter's clock */
    EggRunPages(KnownRun known, Formats formats) {
        this.known = known;
        this.formats = formats;
        this.wording = new EggWording(formats);
    }

    /** A temperature beside the eggs, written down on the road or at a stop. */
    private record Warmth(Instant at, double celsius, String where, String by, int checkId) {}

    EggRunPage page(Role role, String saved, List<EggRun> runs, FormInput check, String checkTo) {
        String heading = heading();
        boolean mayPlan = role == Role.COORDINATOR;
        List<Warmth> warmths = warmths();
        EggBalance balance = known.balance();
        return new EggRunPage(check.titled(heading), heading, say("season.named", known.season().name()),
                mayPlan ? "/season/" + known.season().code() : "", saved.isEmpty() ? "" : say("eggday.saved." + saved),
                wording.about(known, false), known.address(), mayPlan, doubts(), stops(),
                warmths.isEmpty() ? "" : doubt(warmths.get(warmths.size() - 1)),
                warmths.stream().map(this::row).toList(),
                checkTo, CheckForm.boxes(check, formats.speech()), figures(balance), line(balance),
                wording.bring(known), others(runs));
    }

    private String heading() {
        List<EggStop> stops = known.stops();
        String date = wording.date(known.run());
        if (stops.isEmpty()) {
            return say("eggday.title.open", date);
        }
        int done = (int) stops.stream().filter(stop -> known.receipt(stop).isPresent()).count();
        if (done == stops.size()) {
            return say("eggday.title.done", date, wording.eggs(known.balance().intoTanks()),
                    say("eggday.tanks", done));
        }
        if (done > 0) {
            EggStop next = stops.stream().filter(stop -> known.receipt(stop).isEmpty()).findFirst().orElseThrow();
            return say("eggday.title.underWay", date, done, stops.size(), known.tank(next).school());
        }
        String eggs = wording.eggs(stops.stream().mapToInt(EggStop::eggs).sum());
        String schools = say("eggday.schools",
                (int) stops.stream().map(stop -> known.tank(stop).room().schoolCode()).distinct().count());
        return stops.get(0).plannedFor()
                .map(first -> say("eggday.title.planned", date, eggs, schools, wording.clock(first)))
                .orElseGet(() -> say("eggday.title.noTime", date, eggs, schools));
    }

    /** What does not fit together; nothing is changed for it. */
    private List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        LocalTime before = known.run().details().startsAt();
        for (EggStop stop : known.stops()) {
            Optional<LocalTime> time = stop.plannedFor();
            if (time.isPresent() && time.get().isBefore(before)) {
                doubts.add(say("eggday.doubt.order", place(stop), wording.clock(time.get()), wording.clock(before)));
            }
            before = time.filter(before::isBefore).orElse(before);
        }
        OptionalInt collected = known.run().details().eggs();
        int planned = known.stops().stream().mapToInt(EggStop::eggs).sum();
        if (collected.isPresent() && planned > collected.getAsInt() + known.run().details().spread()) {
            doubts.add(say("eggday.doubt.many", planned, collected.getAsInt()));
        }
        return doubts;
    }

    private List<EggRunPage.Stop> stops() {
        List<EggRunPage.Stop> rows = new ArrayList<>();
        List<EggStop> stops = known.stops();
        for (int i = 0; i < stops.size(); i++) {
            EggStop stop = stops.get(i);
            Tank tank = known.tank(stop);
            rows.add(new EggRunPage.Stop(i + 1, stop.plannedFor().map(wording::clock).orElse(""), tank.school(),
                    tank.classroom(), Integer.toString(stop.eggs()), state(stop), water(stop),
                    known.receipt(stop).isPresent(), known.address() + "/tanks/" + tank.code(),
                    known.address() + "/stops/" + tank.code(), i == 0, i == stops.size() - 1));
        }
        return rows;
    }

    private String state(EggStop stop) {
        Optional<EggReceipt> receipt = known.receipt(stop);
        if (receipt.isPresent()) {
            EggReceipt.Details given = receipt.get().details();
            String at = clockAt(given.receivedAt(), known.tank(stop));
            return given.dead().orElse(0) == 0 ? say("eggday.state.received", given.eggs(), at)
                    : say("eggday.state.receivedDead", given.eggs(), at, given.dead().getAsInt());
        }
        return stop.tempered().map(read -> tempering(stop, read)).orElseGet(() -> say("eggday.state.open"));
    }

    private String tempering(EggStop stop, EggStop.Tempered read) {
        List<Tempering.Step> steps = Tempering.steps(Stage.EGG, read.coolerC(), read.tankC(), read.pace());
        return steps.isEmpty() ? say("eggday.state.held") : say("eggday.state.tempering", clockAt(
                read.from().plus(Duration.ofMinutes(steps.get(steps.size() - 1).minute())), known.tank(stop)));
    }

    private String water(EggStop stop) {
        return stop.tempered().map(tempered -> say("eggday.water", wording.degrees(tempered.coolerC()),
                wording.degrees(tempered.tankC()))).orElse("");
    }

    private List<Warmth> warmths() {
        Stream<Warmth> road = known.checks().stream().map(check -> new Warmth(check.at(), check.temperatureC(),
                say("eggday.where." + check.where().code()), check.by(), check.checkId()));
        Stream<Warmth> atStops = known.stops().stream().flatMap(stop -> stop.tempered().stream().map(tempered ->
                new Warmth(tempered.from(), tempered.coolerC(), place(stop), "", 0)));
        return Stream.concat(road, atStops).sorted(Comparator.comparing(Warmth::at)).toList();
    }

    private EggRunPage.Check row(Warmth warmth) {
        return new EggRunPage.Check(formats.clock(warmth.at()), wording.degrees(warmth.celsius()), warmth.where(),
                warmth.by(), switch (Comfort.at(warmth.celsius())) {
                    case FINE -> "";
                    case NEAR_THE_EDGE -> say("eggday.cooler.edge.short");
                    case TOO_WARM -> say("eggday.cooler.tooWarm.short");
                    case TOO_COLD -> say("eggday.cooler.tooCold.short");
                }, warmth.checkId() == 0 ? "" : known.address() + "/checks/" + warmth.checkId() + "/withdrawn");
    }

    private String doubt(Warmth warmth) {
        String read = wording.degrees(warmth.celsius());
        String at = formats.clock(warmth.at());
        String least = wording.wholeDegrees(Tempering.EGGS_NOT_BELOW_C);
        String most = wording.wholeDegrees(Tempering.EGGS_NOT_ABOVE_C);
        return switch (Comfort.at(warmth.celsius())) {
            case FINE -> "";
            case NEAR_THE_EDGE -> say("eggday.cooler.edge", read, at, least, most);
            case TOO_WARM -> say("eggday.cooler.tooWarm", read, at, least, most);
            case TOO_COLD -> say("eggday.cooler.tooCold", read, at, least, most);
        };
    }

    private List<Figure> figures(EggBalance balance) {
        List<Figure> figures = new ArrayList<>();
        if (balance.collected().isPresent()) {
            int spread = known.run().details().spread();
            figures.add(new Figure(say("eggday.figure.collected"), spread == 0
                    ? Integer.toString(balance.collected().getAsInt())
                    : say("count.about", balance.collected().getAsInt(), spread)));
        }
        figures.add(figure("tanks", balance.intoTanks()));
        figures.add(figure("dead", balance.dead()));
        balance.leftOver().ifPresent(eggs -> figures.add(figure("leftOver", eggs)));
        balance.untold().ifPresent(eggs -> figures.add(figure(balance.open() > 0 ? "inCooler" : "unexplained", eggs)));
        return figures;
    }

    private Figure figure(String what, int eggs) {
        return new Figure(say("eggday.figure." + what), eggs < 0 ? "\u2212" + -eggs : Integer.toString(eggs));
    }

    private String line(EggBalance balance) {
        if (balance.collected().isEmpty()) {
            return say("eggday.balance.notCollected");
        }
        int untold = balance.untold().getAsInt();
        if (untold < 0) {
            return say("eggday.balance.more", -untold);
        }
        return balance.open() > 0 || untold == 0 ? "" : say("eggday.balance.less", untold);
    }

    private List<FormPage.Link> others(List<EggRun> runs) {
        return runs.stream().filter(run -> run.runId() != known.run().runId())
                .map(run -> new FormPage.Link(
                        say("eggday.named", wording.date(run)), run.address(known.season().code())))
                .toList();
    }

    private String place(EggStop stop) {
        return StopsForm.place(known.tank(stop));
    }

    private String clockAt(Instant at, Tank tank) {
        return formats.speech().formats(tank.zone(), formats.now()).clock(at);
    }

    private String say(String key, Object... with) {
        return wording.say(key, with);
    }
}
