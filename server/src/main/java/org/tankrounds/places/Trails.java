package org.tankrounds.places;

import org.tankrounds.pages.FormPage.Link;
import org.tankrounds.web.FormInput;

/** Where the pages of places stand. */
final class Trails {
    private Trails() {}

    static Link places(FormInput form) {
        return new Link(form.say("frame.places"), "/places");
    }

    static Link kits(FormInput form) {
        return new Link(form.say("places.kits"), "/places/kits");
    }
}
