package org.tankrounds.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Looks over an open page: by WCAG 2.2 A and AA as far as a program can, and by our own checks. */
final class Scanner {
    private static final List<String> EVERYTHING =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");
    private static final List<String> COLOURS = List.of("color-contrast", "link-in-text-block");
    /** Our own check of it looks at every width. */
    private static final String TARGETS = "target-size";
    private static final String SAID = ".error-summary, .asks, .field__error, [aria-invalid]";
    private static final Map<String, Boolean> OFF = Map.of("enabled", false);
    /** More than any page has; a walk that goes on for longer goes in circles. */
    private static final int MOST_PRESSES = 1000;
    private static final String RUN = """
            ({ runOnly, rules, within }) => axe.run(within || document, \
            { resultTypes: ["violations"], runOnly, rules, preload: false })
              .then(found => found.violations.flatMap(rule => rule.nodes.map(node =>
              rule.id + " at " + node.target.join(" ") + ": " + node.any.concat(node.all, node.none)
                .map(check => check.message).join("; "))))
            """;
    private static final String CHECKS = read("/browser/checks.js");

    private final Page page;

    Scanner(Page page) {
        this.page = page;
    }

    /** From now on every page that is opened there brings the rules along. */
    static void bringAlong(Page page) {
        page.addInitScript(AxeBuilder.getAxeScript());
        page.addInitScript(CHECKS);
    }

    List<String> violations() {
        return run(EVERYTHING, List.of());
    }

    /** Colours are the same at every width, and take the longest to look at. */
    List<String> violationsBesideColour() {
        return run(EVERYTHING, COLOURS);
    }

    /** The only rules that another colour scheme can break. */
    List<String> violationsOfColour() {
        return violationsOfColourWithin("html");
    }

    /** What a refusal brings to a page that has been looked at. */
    List<String> violationsOfColourInWhatIsSaid() {
        return violationsOfColourWithin(SAID);
    }

    private List<String> violationsOfColourWithin(String selector) {
        return sentences(page.evaluate(RUN, Map.of("within", selector,
                "runOnly", Map.of("type", "rule", "values", COLOURS))));
    }

    private List<String> run(List<String> tags, List<String> without) {
        Map<String, Object> rules = Stream.concat(Stream.of(TARGETS), without.stream())
                .collect(Collectors.toMap(rule -> rule, rule -> OFF));
        return sentences(page.evaluate(RUN, Map.of("runOnly", Map.of("type", "tag", "values", tags), "rules", rules)));
    }

    /** @param name of one of our own checks */
    List<String> check(String name) {
        return sentences(page.evaluate("name => window.checks[name]()", name));
    }

    /** Presses Tab from the top to the end of the page. */
    List<String> walk() {
        List<String> faults = new ArrayList<>();
        page.evaluate("() => window.checks.startWalk()");
        page.keyboard().press("Tab");
        int presses = 0;
        while (page.evaluate("() => window.checks.step()") instanceof List<?> found) {
            faults.addAll(sentences(found));
            assertThat(presses++).as("presses of Tab on " + page.url()).isLessThan(MOST_PRESSES);
            page.keyboard().press("Tab");
        }
        faults.addAll(check("endWalk"));
        return faults;
    }

    private static List<String> sentences(Object found) {
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }

    private static String read(String resource) {
        try (InputStream in = Scanner.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
