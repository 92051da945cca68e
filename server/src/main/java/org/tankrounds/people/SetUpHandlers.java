package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.SetUpPage;
import org.tankrounds.people.SetUp.First;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.Speech;

/** Behind the link that the service prints at its first start. */
public final class SetUpHandlers {
    private static final String CHAPTER = "chapter";
    private static final String ZONE = "time_zone";
    private static final List<String> FIELDS = List.of(CHAPTER, ZONE, PersonForm.NAME, PersonForm.EMAIL);

    private final SetUp setUp;
    private final Cookies cookies;
    private final Pages pages;

    public SetUpHandlers(SetUp setUp, Cookies cookies, Pages pages) {
        this.setUp = setUp;
        this.cookies = cookies;
        this.pages = pages;
    }

    public void show(Context ctx) {
        setUp.look(ctx.pathParam("link"));
        cookies.openForm(ctx);
        show(ctx, FormInput.showing(ctx, Map.of(ZONE, zoneOfThisMachine())), NewPassword.blank());
    }

    public void make(Context ctx) {
        setUp.look(ctx.pathParam("link"));
        FormInput form = FormInput.of(ctx, FIELDS);
        String chapter = form.required(CHAPTER, 120, "people.setUp.noChapter");
        String zone = zone(form);
        String name = PersonForm.name(form);
        String email = PersonForm.email(form);
        NewPassword password = NewPassword.of(ctx, List.of(name, email, chapter));
        if (!form.ok() || !password.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form, password);
            return;
        }
        First first = new First(chapter, ZoneId.of(zone), form.say("places.kit.generic"), name, email, password.text());
        cookies.signIn(ctx, setUp.make(ctx.pathParam("link"), first));
        ctx.redirect("/places", HttpStatus.SEE_OTHER);
    }

    private static String zone(FormInput form) {
        String zone = form.required(ZONE, 60, "people.setUp.noZone");
        if (!form.wrong(ZONE) && !ZoneId.getAvailableZoneIds().contains(zone)) {
            form.refuse(ZONE, "people.setUp.unknownZone", zone);
        }
        return zone;
    }

    private static String zoneOfThisMachine() {
        String zone = ZoneId.systemDefault().getId();
        return zone.contains("/") ? zone : "America/New_York";
    }

    private void show(Context ctx, FormInput form, NewPassword password) {
        Speech speech = Speech.of(ctx);
        FormField chapter = form.textBox(CHAPTER, "people.setUp.chapter")
                .withHint(speech.say("people.setUp.chapter.hint"));
        FormField zone = form.textBox(ZONE, "people.setUp.zone").withHint(speech.say("people.setUp.zone.hint"));
        pages.show(ctx, "people/set-up", new SetUpPage(
                speech.titled(!form.ok() || !password.ok(), speech.say("people.setUp.title")), ctx.path(),
                List.of(chapter, zone),
                List.of(PersonForm.nameBox(form, "people.setUp.name"),
                        PersonForm.emailBox(form, "people.setUp.email"),
                        password.box(speech), password.boxAgain(speech))));
    }
}
