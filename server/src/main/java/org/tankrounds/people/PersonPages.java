package org.tankrounds.people;

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
import org.tankrounds.web.Speech;

/** From people to what their pages print. */
final class PersonPages {
    private final Speech speech;

    PersonPages(Speech speech) {
        this.speech = speech;
    }

    PeoplePage list(List<Person> people, List<Tank> tanks, Map<Integer, List<Integer>> tanksOfTeachers) {
        Map<Integer, String> labels = tanks.stream().collect(Collectors.toMap(Tank::tankId, PersonPages::label));
        return new PeoplePage(speech.say("frame.people"), people.stream()
                .map(person -> row(person, tanksOfTeachers.getOrDefault(person.personId(), List.of()), labels))
                .toList());
    }

    PersonPage edit(Optional<Person> person, FormInput form, List<Tank> tanks, Set<String> tickedCodes) {
        String action = "/people" + person.map(known -> "/" + known.code()).orElse("");
        String heading = person.map(Person::name).orElseGet(() -> speech.say("people.add"));
        return new PersonPage(
                form.titled(heading),
                heading,
                action,
                speech.say(person.isPresent() ? "frame.form.save" : "people.addAndLink"),
                PersonForm.nameBox(form, "people.name"),
                PersonForm.emailBox(form, "people.email"),
                PersonForm.roleBox(form),
                tanks.stream().map(tank -> new PersonPage.TankChoice(
                        tank.code(), label(tank), tickedCodes.contains(tank.code()))).toList(),
                person.map(known -> acts(known, action)).orElse(List.of()));
    }

    static String label(Tank tank) {
        return tank.school() + ", " + tank.classroom();
    }

    private PeoplePage.Row row(Person person, List<Integer> tankIds, Map<Integer, String> labels) {
        String sees = person.role() == Role.TEACHER
                ? tankIds.stream().filter(labels::containsKey).map(labels::get).collect(Collectors.joining("; "))
                : speech.say("people.everyTank");
        return new PeoplePage.Row(person.name(), "/people/" + person.code(), person.email(),
                speech.say("people.role." + PersonRepository.word(person.role())),
                sees.isEmpty() ? speech.say("people.noTankYet") : sees, speech.say(state(person)));
    }

    private static String state(Person person) {
        if (!person.enabled()) {
            return "people.state.off";
        }
        return person.passwordChosen() ? "people.state.canSignIn" : "people.state.linkUnused";
    }

    private List<Act> acts(Person person, String action) {
        if (!person.enabled()) {
            return List.of(new Act(speech.say("people.off"), speech.say("people.off.explanation"),
                    action + "/enabled", speech.say("people.letIn")));
        }
        return List.of(
                new Act(speech.say(person.passwordChosen() ? "people.forgotten" : "people.noPassword"),
                        speech.say("people.link.makes"), action + "/invitation", speech.say("people.link.make")),
                new Act(speech.say("people.leaving"), speech.say("people.leaving.explanation"),
                        action + "/disabled", speech.say("people.switchOff")));
    }
}
