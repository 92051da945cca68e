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
    static final String TAKEN = "Somebody in this chapter signs in with this address already. "
            + "Look for them in the list; a person whose account is switched off can be let in again.";

    private static final List<Option> ROLES = List.of(
            new Option("teacher", "Teacher: their own tanks"),
            new Option("mentor", "Mentor: every tank, the rounds"),
            new Option("coordinator", "Coordinator: changes things, too"));

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
        boolean known = ROLES.stream().anyMatch(option -> option.value().equals(form.text(ROLE)));
        if (!known) {
            form.refuse(ROLE, "Choose teacher, mentor or coordinator.");
        }
        return form.ok()
                ? Optional.of(new Details(email, name, PersonRepository.role(form.text(ROLE)))) : Optional.empty();
    }

    static String name(FormInput form) {
        return form.required(NAME, 80, "Give a name.");
    }

    static String email(FormInput form) {
        String email = Email.normal(form.required(EMAIL, Email.MAX_LENGTH, "Give an e-mail address."));
        if (!form.wrong(EMAIL) && !Email.plausible(email)) {
            form.refuse(EMAIL,
                    "\"" + form.text(EMAIL) + "\" is no e-mail address; one looks like name@school.example.");
        }
        return email;
    }

    static FormField nameBox(FormInput form, String label) {
        return form.textBox(NAME, label).withType("text", "name").withHint("How the chapter's pages call them.");
    }

    static FormField emailBox(FormInput form, String label) {
        return form.textBox(EMAIL, label).withType("email", "email").withHint("For signing in.");
    }

    static FormField roleBox(FormInput form) {
        return form.choice(ROLE, "Role", ROLES);
    }

    private static Map<String, String> text(String name, String email, Role role) {
        Map<String, String> text = new LinkedHashMap<>();
        text.put(NAME, name);
        text.put(EMAIL, email);
        text.put(ROLE, PersonRepository.word(role));
        return text;
    }
}
