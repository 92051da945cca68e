package org.tankrounds.eggday;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Limits;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.EggStopPage;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.season.CountMethod;
import org.tankrounds.season.Lot;
import org.tankrounds.transport.Tempering;
import org.tankrounds.transport.Tempering.Step;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Role;
import org.tankrounds.web.TypedNumber;

/** From a stop to the words and numbers of its page, which is read on a phone beside the tank. */
final class EggStopPages {
    /** Outside, fresh water moves the pH of carrying water far: screening bands (design proposal). */
    private static final double CALM_PH_FROM = 6.5;
    private static final double CALM_PH_TO = 8.0;

    private final KnownRun known;
    private final EggStop stop;
    private final Tank tank;
    private final List<Lot> lots;
    private final EggWording wording;
    private final Formats formats;

    /**
     * @param lots of the tank in the season
     * @param formats on the school's clock
     */
    EggStopPages(KnownRun known, EggStop stop, Tank tank, List<Lot> lots, Formats formats) {
        this.known = known;
        this.stop = stop;
        this.tank = tank;
        this.lots = lots;
        this.formats = formats;
        this.wording = new EggWording(formats);
    }

    /** What was typed into the two forms of the page, or what they show. */
    record Typed(FormInput temper, List<FormPage.Clash> clashes, FormInput receipt, List<AskBack> asks,
            String refusal) {
        Typed withTemper(FormInput form, List<FormPage.Clash> found) {
            return new Typed(form, found, receipt, asks, refusal);
        }

        Typed withReceipt(FormInput form, List<AskBack> asked) {
            return new Typed(temper, clashes, form, asked, refusal);
        }

        /** @param why the receipt cannot be written, whatever stands in it */
        Typed withRefusal(FormInput form, String why) {
            return new Typed(temper, clashes, form, asks, why);
        }

        boolean isWrong() {
            return !temper.ok() || !clashes.isEmpty() || !receipt.ok() || !refusal.isEmpty();
        }
    }

    EggStopPage page(Role role, String saved, Typed typed, List<FormField> temper, List<List<FormField>> fields,
            String to, String receiptTo) {
        Optional<EggReceipt> receipt = known.receipt(stop);
        String heading = heading(receipt);
        List<Step> steps = stop.tempered().map(read ->
                Tempering.steps(Stage.EGG, read.coolerC(), read.tankC(), read.pace())).orElse(List.of());
        String title = typed.asks().isEmpty() ? formats.speech().titled(typed.isWrong(), heading)
                : say("frame.titleAsking", heading);
        return new EggStopPage(title, heading, up(role), saved.isEmpty() ? "" : say("eggday.saved." + saved),
                typed.refusal(), to,
                typed.temper().shown(), temper, typed.clashes(), bars(), hints(), answer(steps),
                steps.stream().map(this::row).toList(), receipt.isPresent() ? "" : twice(),
                receipt.map(one -> received(one, role, to)).orElse(EggStopPage.NOTHING), receiptTo,
                receipt.isPresent() ? List.of() : fields, typed.asks(), typed.receipt().text(ReceiptForm.SURE));
    }

    private String heading(Optional<EggReceipt> receipt) {
        if (receipt.isPresent()) {
            EggReceipt.Details given = receipt.get().details();
            return say("eggday.stop.received", tank.classroom(), wording.eggs(given.eggs() - given.dead().orElse(0)),
                    formats.clock(given.receivedAt()));
        }
        return stop.plannedFor().map(time -> say("eggday.stop.title", tank.classroom(), wording.eggs(stop.eggs()),
                wording.clock(time))).orElseGet(() ->
                say("eggday.stop.noTime", tank.classroom(), wording.eggs(stop.eggs())));
    }

    /** A teacher's way leads back to the tank. */
    private List<FormPage.Link> up(Role role) {
        FormPage.Link run = new FormPage.Link(say("eggday.named", wording.date(known.run())), known.address());
        FormPage.Link place = new FormPage.Link(StopsForm.place(tank), "/tanks/" + tank.code());
        return role == Role.TEACHER ? List.of(place) : List.of(run, place);
    }

    private List<String> bars() {
        List<String> bars = new ArrayList<>();
        stop.tempered().ifPresent(read -> {
            Tempering.bar(Stage.EGG, read.coolerC(), read.tankC()).ifPresent(bar -> bars.add(bar(bar, read)));
            read.ph().ifPresent(ph -> {
                if (ph < Limits.DEFAULT.lowestPh() || ph > Limits.DEFAULT.highestPh()) {
                    bars.add(say("eggday.bar.ph", TypedNumber.text(ph, 2),
                            TypedNumber.text(Limits.DEFAULT.lowestPh(), 1),
                            TypedNumber.text(Limits.DEFAULT.highestPh(), 1)));
                }
            });
        });
        return bars;
    }

    private String bar(Tempering.Bar bar, EggStop.Tempered read) {
        String water = wording.degrees(read.tankC());
        String least = wording.wholeDegrees(Tempering.EGGS_NOT_BELOW_C);
        String most = wording.wholeDegrees(Tempering.EGGS_NOT_ABOVE_C);
        return switch (bar) {
            case TOO_FAR_APART -> say("eggday.bar.tooFarApart", wording.degrees(read.coolerC()), water,
                    wording.difference(Math.abs(read.tankC() - read.coolerC())),
                    wording.difference(Tempering.MOST_FOR_EGGS_K), wording.difference(1));
            case TOO_WARM -> say("eggday.bar.tooWarm", water, least, most);
            case DEADLY -> say("eggday.bar.deadly", water, least, most);
            case TOO_COLD -> say("eggday.bar.tooCold", water, least, most);
        };
    }

    private List<String> hints() {
        List<String> hints = new ArrayList<>();
        stop.tempered().ifPresent(read -> {
            CoolerCheck.Comfort comfort = CoolerCheck.Comfort.at(read.coolerC());
            if (comfort == CoolerCheck.Comfort.TOO_WARM || comfort == CoolerCheck.Comfort.TOO_COLD) {
                hints.add(say("eggday.hint.cooler", wording.degrees(read.coolerC()),
                        wording.wholeDegrees(Tempering.EGGS_NOT_BELOW_C),
                        wording.wholeDegrees(Tempering.EGGS_NOT_ABOVE_C)));
            }
            if (read.ph().isEmpty()) {
                hints.add(say("eggday.hint.noPh"));
            } else if (isRestless(read.ph().getAsDouble()) && read.pace() == Tempering.Pace.QUICK) {
                hints.add(say("eggday.hint.ph", TypedNumber.text(read.ph().getAsDouble(), 2)));
            }
        });
        return hints;
    }

    private static boolean isRestless(double ph) {
        return ph < CALM_PH_FROM || ph > CALM_PH_TO;
    }

    private String answer(List<Step> steps) {
        if (steps.isEmpty()) {
            return "";
        }
        Step last = steps.get(steps.size() - 1);
        return last.minute() == 0 ? say("eggday.temper.atOnce")
                : say("eggday.temper.answer", clockAfter(last.minute()), last.minute(), wording.difference(1));
    }

    private EggStopPage.Step row(Step step) {
        return new EggStopPage.Step(clockAfter(step.minute()), wording.degrees(step.temperatureC()),
                step.isGoingOver() ? say("eggday.step.over")
                        : say("eggday.step.share", (int) Math.round(1 / step.share())));
    }

    private String clockAfter(int minutes) {
        return formats.clock(stop.tempered().orElseThrow().from().plus(Duration.ofMinutes(minutes)));
    }

    /** Eggs of that day that no receipt made: they would be counted twice. */
    private String twice() {
        ZoneId zone = tank.zone();
        int eggs = lots.stream()
                .filter(lot -> lot.receivedAt().atZone(zone).toLocalDate().equals(known.run().details().day()))
                .mapToInt(Lot::eggs).sum();
        return eggs == 0 ? "" : say("eggday.receipt.twice", eggs);
    }

    private EggStopPage.Received received(EggReceipt receipt, Role role, String to) {
        EggReceipt.Details given = receipt.details();
        List<String> lines = new ArrayList<>();
        lines.add(say("eggday.receipt.line", given.eggs(), say("count.method." + given.method().code()),
                formats.dateAndClock(given.receivedAt())));
        lines.add(given.dead().isPresent() ? say("eggday.receipt.line.dead", given.dead().getAsInt())
                : say("eggday.receipt.line.notLooked"));
        if (given.spread() > 0 && given.method() != CountMethod.ONE_BY_ONE) {
            lines.add(say("eggday.receipt.line.spread", given.spread()));
        }
        lines.add(say("eggday.receipt.line.signed", given.classLabel(), say("eggday.adult." + given.adult().code()),
                receipt.by()));
        given.note().ifPresent(lines::add);
        lots.stream().filter(lot -> lot.lotId() == receipt.lotId() && lot.eggs() != given.eggs())
                .forEach(lot -> lines.add(say("eggday.receipt.line.changed", lot.eggs())));
        return new EggStopPage.Received(lines,
                "/season/" + known.season().code() + "/tanks/" + tank.code() + "/count",
                receipt.readingCode().map(code -> "/tanks/" + tank.code() + "/readings/" + code).orElse(""),
                role == Role.TEACHER ? "" : to + "/receipt/withdrawn");
    }

    private String say(String key, Object... with) {
        return wording.say(key, with);
    }
}
