package org.tankrounds.people;

import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How an Argon2id hash is kept: the parameters beside it, so that they can change over the years. */
record PhcString(int memoryKib, int passes, int lanes, byte[] salt, byte[] hash) {
    private static final Pattern SHAPE = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,3})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    static PhcString parse(String text) {
        Matcher matcher = SHAPE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("not an Argon2id hash, version 19, in PHC form");
        }
        return new PhcString(
                Integer.parseInt(matcher.group(1)),
                Integer.parseInt(matcher.group(2)),
                Integer.parseInt(matcher.group(3)),
                Base64.getDecoder().decode(matcher.group(4)),
                Base64.getDecoder().decode(matcher.group(5)));
    }

    String print() {
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + memoryKib + ",t=" + passes + ",p=" + lanes
                + "$" + base64.encodeToString(salt) + "$" + base64.encodeToString(hash);
    }
}
