package org.tankrounds.people;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import org.tankrounds.db.Transactions;
import org.tankrounds.pages.HandOverPage;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Pages;
import org.tankrounds.web.RefusedException;
import org.tankrounds.web.Speech;

/** The chapter's people, for its coordinators. */
public final class PersonHandlers {
    private final Transactions transactions;
    private final PersonRepository people;
    private final PersonActs acts;
    private final TankRepository tanks;
    private final SiteAddress site;
    private final Pages pages;

    public PersonHandlers(Transactions transactions, PersonRepository people, PersonActs acts, TankRepository tanks,
            SiteAddress site, Pages pages) {
        this.transactions = transactions;
        this.people = people;
        this.acts = acts;
        this.tanks = tanks;
        this.site = site;
        this.pages = pages;
    }

    public void list(Context ctx) {
        Caller caller = Caller.of(ctx);
        PersonPages shown = new PersonPages(Speech.of(ctx));
        pages.show(ctx, "people/people", transactions.inChapter(caller.chapterId(), tx -> shown.list(
                people.list(tx, caller.chapterId()),
                tanks.list(tx, caller),
                people.tanksOfTeachers(tx, caller.chapterId()))));
    }

    public void showNew(Context ctx) {
        show(ctx, Optional.empty(), FormInput.showing(ctx, PersonForm.blank()), Set.of());
    }

    public void create(Context ctx) {
        Caller caller = Caller.of(ctx);
        FormInput form = FormInput.of(ctx, PersonForm.FIELDS);
        Optional<Details> details = PersonForm.parse(form);
        List<String> secret = new ArrayList<>();
        boolean saved = details.isPresent() && form.saves(() -> secret.add(transactions.inChapter(caller.chapterId(),
                tx -> acts.add(tx, caller.chapterId(), details.get(), ticked(tx, ctx)))),
                PersonForm.EMAIL, PersonForm.TAKEN);
        if (saved) {
            handOver(ctx, details.get().name(), secret.get(0));
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.empty(), form, Set.copyOf(ctx.formParams(PersonForm.TANK)));
    }

    public void showEdit(Context ctx) {
        Caller caller = Caller.of(ctx);
        Person person = load(ctx);
        Set<String> codes = transactions.inChapter(caller.chapterId(), tx -> {
            Set<Integer> ids = new HashSet<>(people.tankIds(tx, caller.chapterId(), person.personId()));
            return Set.copyOf(tanks.list(tx, caller).stream()
                    .filter(tank -> ids.contains(tank.tankId())).map(Tank::code).toList());
        });
        show(ctx, Optional.of(person), FormInput.showing(ctx, PersonForm.textOf(person)), codes);
    }

    public void update(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Person person = load(ctx);
        FormInput form = FormInput.of(ctx, PersonForm.FIELDS);
        Optional<Details> details = PersonForm.parse(form);
        boolean saved = details.isPresent() && saves(form, () -> transactions.inChapter(chapterId, tx -> {
            acts.update(tx, chapterId, person, details.get(), ticked(tx, ctx));
            return null;
        }));
        if (saved) {
            ctx.redirect("/people", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(ctx, Optional.of(person), form, Set.copyOf(ctx.formParams(PersonForm.TANK)));
    }

    public void invite(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Person person = load(ctx);
        handOver(ctx, person.name(), transactions.inChapter(chapterId, tx -> acts.invite(tx, chapterId, person)));
    }

    public void disable(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Person person = load(ctx);
        transactions.inChapter(chapterId, tx -> {
            acts.disable(tx, chapterId, person);
            return null;
        });
        ctx.redirect("/people", HttpStatus.SEE_OTHER);
    }

    public void enable(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        Person person = load(ctx);
        transactions.inChapter(chapterId, tx -> {
            acts.enable(tx, chapterId, person);
            return null;
        });
        ctx.redirect("/people", HttpStatus.SEE_OTHER);
    }

    private static boolean saves(FormInput form, Runnable write) {
        try {
            return form.saves(write, PersonForm.EMAIL, PersonForm.TAKEN);
        } catch (RefusedException e) {
            form.refuse(PersonForm.ROLE, e.saying());
            return false;
        }
    }

    private Person load(Context ctx) {
        int chapterId = Caller.of(ctx).chapterId();
        return transactions.inChapter(chapterId, tx -> people.get(tx, chapterId, ctx.pathParam("person")));
    }

    /** Only tanks of this chapter: a code from elsewhere does not exist. */
    private List<Integer> ticked(DSLContext tx, Context ctx) {
        Caller caller = Caller.of(ctx);
        return ctx.formParams(PersonForm.TANK).stream().distinct()
                .map(code -> tanks.get(tx, caller, code).tankId()).toList();
    }

    private void show(Context ctx, Optional<Person> person, FormInput form, Set<String> tickedCodes) {
        Caller caller = Caller.of(ctx);
        List<Tank> all = transactions.inChapter(caller.chapterId(), tx -> tanks.list(tx, caller));
        pages.show(ctx, "people/person", new PersonPages(Speech.of(ctx)).edit(person, form, all, tickedCodes));
    }

    private void handOver(Context ctx, String name, String secret) {
        String link = site.of(ctx, "/invitations/" + secret);
        Speech speech = Speech.of(ctx);
        pages.show(ctx, "people/hand-over", new HandOverPage(
                speech.say("people.link.title", name),
                speech.say("people.link.explanation", name, Invitations.VALID.toDays()),
                speech.say("people.link"), link, "/people", speech.say("people.link.back")));
    }
}
