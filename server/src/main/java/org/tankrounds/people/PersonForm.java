package org.tankrounds.people;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tankrounds.pages.FormField;
import org.tankrounds.pages.FormField.Option;
import org.tankrounds.people.PersonRepository.Details;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Role;

/** A person's form: text in, typed values or sentences out. */
final class PersonForm {
    static final String NAME = "name";
    static final String EMAIL = "email";
    static final String ROLE = "role";
    /** Repeated, one for each tank that is ticked. */
    static final String TANK = "tank";
    static final List<String> FIELDS = List.of(NAME, EMAIL, ROLE);
    static final String TAKEN = "people.taken";

    private static final List<Role> ROLES = List.of(Role.TEACHER, Role.MENTOR, Role.COORDINATOR);

    private PersonForm() {}

    static Map<String, String> blank() {
        return text("", "", Role.TEACHER);
    }

    static Map<String, String> textOf(Person person) {
        return text(person.name(), person.email(), person.role());
    }

    static Optional<Details> parse(FormInput form) {
        String name = name(form);
        String email = email(form);
        if (ROLES.stream().map(PersonRepository::word).noneMatch(form.text(ROLE)::equals)) {
            form.refuse(ROLE, "people.noRole");
        }
        return form.ok()
                ? Optional.of(new Details(email, name, PersonRepository.role(form.text(ROLE)))) : Optional.empty();
    }

    static String name(FormInput form) {
        return form.required(NAME, 80, "people.noName");
    }

    static String email(FormInput form) {
        String email = Email.normal(form.required(EMAIL, Email.MAX_LENGTH, "people.noEmail"));
        if (!form.wrong(EMAIL) && !Email.plausible(email)) {
            form.refuse(EMAIL, "people.wrongEmail", form.text(EMAIL));
        }
        return email;
    }

    static FormField nameBox(FormInput form, String label) {
        return form.textBox(NAME, label).withType("text", "name").withHint(form.say("people.name.hint"));
    }

    static FormField emailBox(FormInput form, String label) {
        return form.textBox(EMAIL, label).withType("email", "email").withHint(form.say("people.email.hint"));
    }

    static FormField roleBox(FormInput form) {
        return form.choice(ROLE, "people.role", ROLES.stream().map(PersonRepository::word)
                .map(role -> new Option(role, form.say("people.role.sees." + role))).toList());
    }

    private static Map<String, String> text(String name, String email, Role role) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, name);
        text.put(EMAIL, email);
        text.put(ROLE, PersonRepository.word(role));
        return text;
    }
}
