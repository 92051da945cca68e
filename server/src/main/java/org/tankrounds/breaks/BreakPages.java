package org.tankrounds.breaks;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.pages.AskBack;
import org.tankrounds.pages.BreaksPage;
import org.tankrounds.pages.FormPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Formats;
import org.tankrounds.words.Saying;

/** From a tank's breaks to their page. */
final class BreakPages {

    /**
     * What there is to show.
     *
     * @param suggested what another class of the chapter entered, for the form of a new one
     */
    record Known(Tank tank, List<BreakWatch> watches, Optional<SchoolBreak> suggested) {}

    /**
     * What was typed and cannot be taken yet.
     *
     * @param breakId of the break whose days it is about; 0 of a new break
     * @param asks what is asked back once
     */
    record Typed(int breakId, FormInput form, List<FormPage.Clash> clashes, List<AskBack> asks) {}

    private static final List<String> USUAL = List.of("custodian", "office", "teacher", "mentor");

    private final Known known;
    private final Formats formats;
    private final BreakWording wording;

    BreakPages(Known known, Formats formats) {
        this.known = known;
        this.formats = formats;
        this.wording = new BreakWording(formats);
    }

    BreaksPage page(String saved, Optional<Typed> typed, boolean mayPlan) {
        List<BreaksPage.Plan> plans = known.watches().stream().map(watch -> plan(watch, typed)).toList();
        FormInput added = typed.filter(one -> one.breakId() == 0).map(Typed::form).orElseGet(() -> FormInput.showing(
                formats.speech(), BreakForm.days(known.suggested().filter(one -> known.watches().isEmpty()))));
        String heading = wording.heading(known.watches());
        return new BreaksPage(title(typed, heading), heading,
                say("breaks.place", known.tank().school(), known.tank().classroom()), known.tank().code(), saved, plans,
                mayPlan, mayTakeAlong(), USUAL.stream().map(key -> say("breaks.usual." + key)).toList(),
                new BreakForm(added).boxes());
    }

    private boolean mayTakeAlong() {
        return known.watches().stream().anyMatch(watch -> watch.schoolBreak().lookers().keySet().stream()
                .anyMatch(day -> !day.isBefore(watch.today())));
    }

    private String title(Optional<Typed> typed, String heading) {
        boolean asks = typed.filter(one -> !one.asks().isEmpty()).isPresent();
        return asks ? say("frame.titleAsking", heading) : formats.speech().titled(typed.isPresent(), heading);
    }

    private BreaksPage.Plan plan(BreakWatch watch, Optional<Typed> typed) {
        SchoolBreak planned = watch.schoolBreak();
        Optional<Typed> own = typed.filter(one -> one.breakId() == planned.breakId());
        FormInput input = own.map(Typed::form)
                .orElseGet(() -> FormInput.showing(formats.speech(), BreakForm.plan(planned)));
        BreakForm form = new BreakForm(input);
        return new BreaksPage.Plan("/tanks/" + known.tank().code() + "/breaks/" + planned.breakId(),
                "break-" + planned.breakId(), planned.name(), wording.span(planned), wording.line(watch),
                input.shown(), planned.days().stream().map(day -> day(watch, form, day)).toList(),
                form.othersBox(planned), own.map(Typed::clashes).orElse(List.of()),
                own.map(Typed::asks).orElse(List.of()), input.text(BreakForm.SURE));
    }

    private BreaksPage.Day day(BreakWatch watch, BreakForm form, LocalDate day) {
        String date = wording.day(day);
        return new BreaksPage.Day(date, form.looker(watch.schoolBreak(), day, say("breaks.form.lookerOn", date)),
                state(watch, day), day.isBefore(watch.today()), day.equals(watch.today()));
    }

    private String state(BreakWatch watch, LocalDate day) {
        if (watch.looked().contains(day)) {
            return say("breaks.state.looked");
        }
        if (day.isBefore(watch.today())) {
            return say("breaks.state.nobody");
        }
        return day.equals(watch.today()) ? say("breaks.state.notYet") : "";
    }

    /** Names of the fields of a plan, for what somebody else changed meanwhile. */
    Map<String, Saying> labels(SchoolBreak planned) {
        Map<String, Saying> labels = new HashMap<>();
        planned.days().forEach(day -> labels.put(BreakForm.box(planned, day), Saying.asIs(wording.day(day))));
        return labels;
    }

    private String say(String key, Object... with) {
        return formats.speech().say(key, with);
    }
}
