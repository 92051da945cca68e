package org.tankrounds.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tankrounds.pages.FormPage.Act;
import org.tankrounds.pages.PeoplePage;
import org.tankrounds.pages.PersonPage;
import org.tankrounds.places.Tank;
import org.tankrounds.web.FormInput;
import org.tankrounds.web.Role;

/** From people to what their pages print. */
final class PersonPages {
    private PersonPages() {}

    static PeoplePage list(List<Person> people, List<Tank> tanks, Map<Integer, List<Integer>> tanksOfTeachers) {
        Map<Integer, String> labels = tanks.stream().collect(Collectors.toMap(Tank::tankId, PersonPages::label));
        return new PeoplePage(people.stream()
                .map(person -> row(person, tanksOfTeachers.getOrDefault(person.personId(), List.of()), labels))
                .toList());
    }

    static PersonPage edit(Optional<Person> person, FormInput form, List<Tank> tanks, Set<String> tickedCodes) {
        String action = "/people" + person.map(known -> "/" + known.code()).orElse("");
        return new PersonPage(
                person.map(Person::name).orElse("Add a person"),
                action,
                person.isPresent() ? "Save" : "Add and make a link",
                PersonForm.nameBox(form, "Name"),
                PersonForm.emailBox(form, "E-mail address"),
                PersonForm.roleBox(form),
                tanks.stream().map(tank -> new PersonPage.TankChoice(
                        tank.code(), label(tank), tickedCodes.contains(tank.code()))).toList(),
                person.map(known -> acts(known, action)).orElse(List.of()));
    }

    static String label(Tank tank) {
        return tank.school() + ", " + tank.classroom();
    }

    private static PeoplePage.Row row(Person person, List<Integer> tankIds, Map<Integer, String> labels) {
        String sees = person.role() == Role.TEACHER
                ? tankIds.stream().filter(labels::containsKey).map(labels::get).collect(Collectors.joining("; "))
                : "every tank";
        return new PeoplePage.Row(person.name(), "/people/" + person.code(), person.email(),
                PersonRepository.word(person.role()), sees.isEmpty() ? "no tank yet" : sees, state(person));
    }

    private static String state(Person person) {
        if (!person.enabled()) {
            return "switched off";
        }
        return person.passwordChosen() ? "can sign in" : "has not used the link yet";
    }

    private static List<Act> acts(Person person, String action) {
        List<Act> acts = new ArrayList<>();
        if (!person.enabled()) {
            acts.add(new Act("Switched off", "This person cannot sign in. What they wrote is kept.",
                    action + "/enabled", "Let them in again"));
            return acts;
        }
        acts.add(new Act(person.passwordChosen() ? "Forgotten password" : "No password yet",
                "Makes a link with which they choose a new password. Links made before stop working.",
                action + "/invitation", "Make a link"));
        acts.add(new Act("Leaving the chapter",
                "Signs them out everywhere at once. What they wrote is kept, and you can let them in again.",
                action + "/disabled", "Switch off"));
        return acts;
    }
}
