package org.tankrounds.walls;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Crawler;
import org.tankrounds.testing.TestApp;

/** Every form, sent back with what nobody would type: refused or taken, never broken, and nothing of it runs. */
class OddFormsIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern FORM =
            Pattern.compile("<form[^>]* action=\"([^\"]+)\".*?</form>", Pattern.DOTALL);
    private static final Pattern FIELD =
            Pattern.compile("<(?:input|select|textarea|button)[^>]* name=\"([^\"]+)\"[^>]*>");
    private static final Pattern VALUE = Pattern.compile(" value=\"([^\"]*)\"");
    /** What makes one form another of the same kind: codes, which have no vowels, and numbers. */
    private static final Pattern WHICH =
            Pattern.compile("/([2-9bcdfghjkmnpqrstvwxz]{6,12}|[0-9]+)(?=/|$|\\?)");
    private static final List<String> ODD = List.of(
            "\u0000", "a\u0000b", "\ud83d\udc1f", "\ufffe\uffff", "x".repeat(5_000), "<script>alert(1)</script>",
            "-1", "1e999", "NaN", "99999999999999999999", "0x1F", "1,2,3", "=1+1", "' OR 1=1 --", "../../x", "%00",
            "71\t52\t53\n7.2\t7.0", "9999-12-31", "-292275055-05-16", "2026-02-30", "+999999999-12-31", "null",
            "\r\n\r\n");

    private static Browserless browser;
    private static MarkedChapter chapter;
    /** One of each kind. */
    private static final Map<String, Form> FORMS = new TreeMap<>();

    /** @param fields as the page shows them */
    private record Form(String action, Map<String, String> fields) {
        @Override
        public String toString() {
            return action;
        }
    }

    static Stream<Form> forms() {
        if (FORMS.isEmpty()) {
            chapter = MarkedChapter.add(APP, "Fellbrook");
            browser = APP.signedIn(chapter.cast().coordinator());
            Crawler.crawl(browser, "/").values().forEach(OddFormsIT::collect);
            FORMS.keySet().removeAll(List.of("/sign-out", "/account/password"));
            browser.get("/account");
        }
        return FORMS.values().stream();
    }

    @Test
    void everyKindOfForm_isAmongThem() {
        assertThat(forms()).hasSizeGreaterThan(15).extracting(Form::action).contains("/people", "/tokens",
                "/places/schools", "/places/kits", "/season", "/tanks/" + chapter.cast().tankA().code() + "/log",
                "/tanks/" + chapter.cast().tankA().code() + "/month");
    }

    @ParameterizedTest
    @MethodSource("forms")
    void oddValues_neverBreakAForm(Form form) {
        Map<String, String> shown = form.fields();
        for (String odd : ODD) {
            Map<String, String> all = new LinkedHashMap<>(shown);
            all.replaceAll((name, value) -> odd);
            check(form.action(), "everything " + odd, all);
        }
        shown.keySet().forEach(name -> {
            for (String odd : ODD.subList(1, 3)) {
                Map<String, String> one = new LinkedHashMap<>(shown);
                one.put(name, odd);
                check(form.action(), name + " " + odd, one);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"/places/kits/kit?kit=", "/places/kits/new?like=", "/places/schools/{school}/room?room=",
            "/places/schools/{school}/tanks/new?room=", "/tanks/{tank}?saved=", "/tanks/{tank}?span=",
            "/tanks/{tank}/log?saved=", "/tanks/{tank}/sheet?month=", "/tanks/{tank}/month?month=",
            "/tanks/{tank}/month?saved=", "/rounds?for=", "/sign-in?next="})
    void oddQuestions_neverBreakAPage(String address) {
        forms();
        String asked = address.replace("{school}", chapter.things().get("school"))
                .replace("{tank}", chapter.cast().tankA().code());
        for (String odd : ODD) {
            Answer answer = browser.get(asked + URLEncoder.encode(odd, StandardCharsets.UTF_8));
            assertThat(answer.status()).as("%s%n%s", asked, answer.body()).isIn(200, 303, 400, 404, 414);
            assertThat(answer.body()).as(asked).doesNotContain("<script>alert");
        }
    }

    @Test
    void aPersonWithATankThatCannotBe_isRefused() {
        forms();
        Cast.Member teacher = chapter.cast().teacherB();
        Answer answer = browser.post("/people/" + teacher.code(), "name", teacher.name(), "email", teacher.email(),
                "role", "teacher", "tank", "\0");
        assertThat(answer.status()).as(answer.body()).isIn(400, 404, 409);
    }

    @Test
    void thingsOfAnotherChapter_cannotBeNamedInAForm() {
        forms();
        MarkedChapter other = MarkedChapter.add(APP, "Harrowmere");
        String theirTank = other.cast().tankA().code();
        assertThat(browser.post("/tokens", "label", "x", "opens", theirTank).status()).isEqualTo(404);
        assertThat(browser.post("/people", "name", "Pat", "email", "pat@" + theirTank + ".example", "role", "teacher",
                "tank", theirTank).status()).isEqualTo(404);
        Answer kit = browser.post("/tanks/" + chapter.cast().tankA().code() + "/log", "kit", other.things().get("kit"),
                "note", "with another chapter's kit", "submission", "theirs");
        assertThat(kit.status()).isIn(303, 422);
        assertThat(browser.get("/tanks/" + chapter.cast().tankA().code()).body()).doesNotContain("Harrowmere");
    }

    private static void check(String action, String what, Map<String, String> fields) {
        Map<String, String> form = new LinkedHashMap<>(fields);
        form.put("form_token", browser.formToken());
        Answer answer = browser.postForm(action, form);
        String asked = action + ": " + what.substring(0, Math.min(60, what.length()));
        assertThat(answer.status()).as("%s%n%s", asked, answer.body()).isIn(200, 303, 400, 404, 409, 413, 422);
        Guarded.check(asked, answer);
        assertThat(answer.body()).as(asked).doesNotContain("<script>alert");
    }

    private static void collect(Answer page) {
        Matcher form = FORM.matcher(page.body());
        while (form.find()) {
            Map<String, String> fields = new LinkedHashMap<>();
            Matcher field = FIELD.matcher(form.group());
            while (field.find()) {
                Matcher value = VALUE.matcher(field.group());
                fields.put(field.group(1), value.find() ? value.group(1) : "");
            }
            fields.remove("form_token");
            String action = form.group(1).replace("&amp;", "&");
            FORMS.putIfAbsent(WHICH.matcher(action).replaceAll("/x"), new Form(action, fields));
        }
    }
}
