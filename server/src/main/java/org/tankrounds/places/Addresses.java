package org.tankrounds.places;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of the pages of places. */
final class Addresses {
    private Addresses() {}

    static String school(School school) {
        return "/places/schools/" + school.code();
    }

    static String room(School school, String room) {
        return school(school) + "/room?room=" + encoded(room);
    }

    static String newTank(School school, String room) {
        return school(school) + "/tanks/new?room=" + encoded(room);
    }

    static String tank(Tank tank) {
        return "/places/tanks/" + tank.code();
    }

    static String kit(String name) {
        return "/places/kits/kit?kit=" + encoded(name);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
