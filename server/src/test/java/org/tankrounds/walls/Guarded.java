package org.tankrounds.walls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.tankrounds.testing.Browserless.Answer;

/** What every answer carries, whoever asked for what and however it ended. */
final class Guarded {
    private static final List<String> DIRECTIVES = List.of("default-src 'none'", "script-src 'self'",
            "style-src 'self'", "worker-src 'self'", "form-action 'self'", "base-uri 'none'", "frame-ancestors 'none'");

    private Guarded() {}

    static void check(String asked, Answer answer) {
        assertThat(answer.header("content-security-policy").orElse("")).as("policy of %s", asked)
                .contains(DIRECTIVES).doesNotContain("unsafe");
        assertThat(answer.header("x-content-type-options")).as("type of %s", asked).contains("nosniff");
        assertThat(answer.header("referrer-policy")).as("referrer of %s", asked).contains("same-origin");
        assertThat(answer.header("cross-origin-opener-policy")).as("opener of %s", asked)
                .contains("same-origin");
        assertThat(answer.header("server")).as("server of %s", asked).isEmpty();
        if (asked.endsWith("/sw.js") || asked.endsWith("/app.webmanifest")) {
            assertThat(answer.header("cache-control")).as("keeping %s", asked).contains("no-cache");
        } else if (!asked.contains("/assets/")) {
            assertThat(answer.header("cache-control").orElse("")).as("keeping %s", asked)
                    .startsWith("private, no-");
        }
        if (answer.header("content-type").orElse("").startsWith("text/html")) {
            assertThat(answer.body()).as("page of %s", asked).startsWith("<!DOCTYPE html>")
                    .doesNotContain("<style").doesNotContain(" style=\"")
                    .doesNotContainPattern("<script(?![^>]*src=)")
                    .doesNotContainPattern("<[^>]+ on[a-z]+=\"");
        }
    }
}
