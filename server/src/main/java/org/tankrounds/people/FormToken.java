package org.tankrounds.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import org.tankrounds.web.Secrets;

/** What every form sends back. Another site cannot know it, because it cannot read the cookie that it comes from. */
final class FormToken {
    static final String FIELD = "form_token";

    private FormToken() {}

    static String of(String cookieValue) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(Secrets.sha256("form token of " + cookieValue));
    }

    static boolean same(String expected, String given) {
        return !expected.isEmpty() && given != null && MessageDigest.isEqual(
                expected.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }
}
