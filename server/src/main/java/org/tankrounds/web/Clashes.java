package org.tankrounds.web;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tankrounds.pages.FormPage.Clash;
import org.tankrounds.words.Saying;

/** What somebody else changed between showing a form and sending it back. */
public final class Clashes {
    private final FormInput form;
    private final Map<String, Saying> labels;
    private final List<Clash> found = new ArrayList<>();

    /** @param labels of the form's fields, by key */
    public Clashes(FormInput form, Map<String, Saying> labels) {
        this.form = form;
        this.labels = labels;
    }

    /**
     * Compares with what is stored, inside the transaction that would write and behind its row lock.
     *
     * @return whether writing would overwrite what nobody has seen
     */
    public boolean with(Map<String, String> current) {
        if (!form.isStale(current)) {
            return false;
        }
        current.forEach((name, theirs) -> {
            if (!form.text(name).equals(theirs)) {
                found.add(new Clash(form.say(labels.get(name)), shown(form.text(name)), shown(theirs)));
            }
        });
        form.haveSeen(current);
        return true;
    }

    public List<Clash> found() {
        return List.copyOf(found);
    }

    /** Of an answer that shows the form again. */
    public HttpStatus status() {
        return found.isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.CONFLICT;
    }

    private String shown(String text) {
        return text.isEmpty() ? form.say("frame.form.empty") : text;
    }
}
