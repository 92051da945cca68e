package org.tankrounds.places;

import org.tankrounds.pages.FormPage.Link;

/** Where the pages of places stand. */
final class Trails {
    static final Link PLACES = new Link("Places", "/places");
    static final Link KITS = new Link("Kits", "/places/kits");

    private Trails() {}
}
