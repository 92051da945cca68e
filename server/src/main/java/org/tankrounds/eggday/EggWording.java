package org.tankrounds.eggday;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.tankrounds.transport.Tempering;
import org.tankrounds.web.Formats;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** What pages and paper of an egg day say in the same words. */
final class EggWording {
    private final Formats formats;
    private final Speech speech;

    EggWording(Formats formats) {
        this.formats = formats;
        this.speech = formats.speech();
    }

    String say(String key, Object... with) {
        return speech.say(key, with);
    }

    Formats formats() {
        return formats;
    }

    String date(EggRun run) {
        return speech.written("time.pattern.date", run.details().day());
    }

    String clock(LocalTime time) {
        return speech.written("time.pattern.clock", time);
    }

    String eggs(int eggs) {
        return say("eggday.eggs", eggs);
    }

    String degrees(double celsius) {
        return formats.temperature(celsius, 1);
    }

    String wholeDegrees(double celsius) {
        return formats.temperature(celsius, 0);
    }

    String difference(double kelvin) {
        Scale scale = speech.scale();
        return TypedNumber.text(scale.ofDifference(kelvin), 1) + Formats.NO_BREAK + scale.sign();
    }

    /** From whom, by which papers, how far the eggs have come; a line each. */
    List<String> about(KnownRun known, boolean onPaper) {
        EggRun.Details run = known.run().details();
        List<String> lines = new ArrayList<>();
        lines.add(run.supplier().map(supplier -> say("eggday.about.start", clock(run.startsAt()), supplier))
                .orElseGet(() -> say("eggday.about.noSupplier", clock(run.startsAt()))));
        List<String> papers = new ArrayList<>();
        papers.add(run.certificate().map(number -> say("eggday.about.certificate", number))
                .orElseGet(() -> say("eggday.about.noCertificate")));
        papers.add(run.permit().map(number -> say("eggday.about.permit", number))
                .orElseGet(() -> say("eggday.about.noPermit")));
        papers.add(run.thermalUnitsC().isPresent()
                ? say("season.lot.units", TypedNumber.text(run.thermalUnitsC().getAsDouble(), 0))
                : say("season.lot.unitsUnknown"));
        lines.add(String.join(" · ", papers));
        run.note().filter(note -> !onPaper).ifPresent(lines::add);
        return lines;
    }

    /** What to bring; the ice for so long a drive. */
    List<String> bring(KnownRun known) {
        List<String> things = new ArrayList<>();
        double hours = Drive.hours(known);
        things.add(say("eggday.bring.cooler"));
        things.add(say("eggday.bring.ice", Formats.significant(Drive.iceKg(hours), 2) + Formats.NO_BREAK + "kg",
                say("time.hours", Math.round(hours)), wholeDegrees(Drive.HELD_C), wholeDegrees(Drive.OUTSIDE_C)));
        things.add(say("eggday.bring.thermometer"));
        things.add(say("eggday.bring.buckets", known.stops().size()));
        things.add(say("eggday.bring.picking"));
        things.add(say("eggday.bring.papers"));
        things.add(say("eggday.bring.hands"));
        return things;
    }

    /** How eggs are tempered, for paper that knows no temperatures yet. */
    List<String> rules() {
        return List.of(
                say("eggday.rule.apart", difference(Tempering.MOST_FOR_EGGS_K),
                        wholeDegrees(Tempering.EGGS_NOT_BELOW_C), wholeDegrees(Tempering.EGGS_NOT_ABOVE_C)),
                say("eggday.rule.pace", difference(1)),
                say("eggday.rule.last"));
    }

    /** Of what is done with hands and water at the tank. */
    List<String> cautions() {
        return List.of(say("eggday.caution.permit"), say("eggday.caution.hands"), say("eggday.caution.water"),
                say("eggday.caution.disinfect"));
    }
}
