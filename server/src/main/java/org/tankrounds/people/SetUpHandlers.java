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
        show(ctx, FormInput.showing(Map.of(ZONE, zoneOfThisMachine())), NewPassword.blank());
    }

    public void make(Context ctx) {
        setUp.look(ctx.pathParam("link"));
        FormInput form = FormInput.of(ctx, FIELDS);
        String chapter = form.required(CHAPTER, 120, "Give the chapter's name.");
        String zone = zone(form);
        String name = PersonForm.name(form);
        String email = PersonForm.email(form);
        NewPassword password = NewPassword.of(ctx, List.of(name, email, chapter));
        if (!form.ok() || !password.ok()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(ctx, form, password);
            return;
        }
        First first = new First(chapter, ZoneId.of(zone), name, email, password.text());
        cookies.signIn(ctx, setUp.make(ctx.pathParam("link"), first));
        ctx.redirect("/places", HttpStatus.SEE_OTHER);
    }

    private static String zone(FormInput form) {
        String zone = form.required(ZONE, 60, "Write the chapter's time zone, such as America/New_York.");
        if (!form.wrong(ZONE) && !ZoneId.getAvailableZoneIds().contains(zone)) {
            form.refuse(ZONE, "There is no time zone \"" + zone + "\"; write its IANA name, such as America/New_York.");
        }
        return zone;
    }

    private static String zoneOfThisMachine() {
        String zone = ZoneId.systemDefault().getId();
        return zone.contains("/") ? zone : "America/New_York";
    }

    private void show(Context ctx, FormInput form, NewPassword password) {
        FormField chapter = form.textBox(CHAPTER, "Chapter").withHint("As the volunteers call it.");
        FormField zone = form.textBox(ZONE, "Time zone").withHint("The clock of the chapter's pages; its IANA name.");
        pages.show(ctx, "people/set-up", new SetUpPage(ctx.path(),
                List.of(chapter, zone),
                List.of(PersonForm.nameBox(form, "Your name"), PersonForm.emailBox(form, "Your e-mail address"),
                        password.box(Speech.of(ctx)), password.boxAgain(Speech.of(ctx)))));
    }
}
