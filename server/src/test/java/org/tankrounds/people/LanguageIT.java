package org.tankrounds.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.TestApp;

/** Everybody is spoken to in their own language, and nobody in another's. */
final class LanguageIT {
    private static final TestApp APP = TestApp.shared();

    private final Cast cast = Cast.add(APP.transactions(), "Two languages");
    private final String log = "/tanks/" + cast.tankA().code() + "/log";
    private Browserless browser;

    @BeforeEach
    void open() {
        browser = APP.browser();
    }

    @Test
    void beforeSigningIn_thePagesFollowTheBrowser() {
        assertThat(browser.header("Accept-Language", "es-MX,es;q=0.9,en;q=0.8").get("/sign-in"))
                .satisfies(LanguageIT::isSpanish);
        assertThat(browser.header("Accept-Language", "fr, en;q=0.5, es;q=0.4").get("/sign-in"))
                .satisfies(LanguageIT::isEnglish);
        assertThat(browser.header("Accept-Language", "es;q=0").get("/sign-in")).satisfies(LanguageIT::isEnglish);
        assertThat(browser.header("Accept-Language", "\u00e9;;q=x").get("/sign-in")).satisfies(LanguageIT::isEnglish);
        assertThat(browser.header("Accept-Language", null).get("/sign-in")).satisfies(LanguageIT::isEnglish);
    }

    @Test
    void theButton_isRememberedOnThisBrowser() {
        assertThat(browser.get("/card").body()).contains("lang=\"es\">Español</button>");

        Answer chosen = browser.header("Referer", APP.baseUrl() + "/card").post("/language", "language", "es");

        assertThat(chosen.status()).isEqualTo(303);
        assertThat(chosen.location()).isEqualTo("/card");
        assertThat(browser.get("/card")).satisfies(LanguageIT::isSpanish);
        assertThat(browser.get("/card").body()).contains("lang=\"en\">English</button>");
        assertThat(browser.post("/language", "language", "tlh").status()).isEqualTo(303);
        assertThat(browser.get("/card")).satisfies(LanguageIT::isSpanish);
    }

    @Test
    void theAccount_decides_onEveryBrowser() {
        browser.signIn(cast.teacherA());
        assertThat(choose("es", "[degF]").location()).isEqualTo("/account?saved");

        assertThat(browser.header("Accept-Language", "en").get("/account")).satisfies(LanguageIT::isSpanish);
        assertThat(browser.get("/account?saved").body()).contains("Guardado.")
                .contains("value=\"es\" selected").contains("value=\"[degF]\" selected")
                .doesNotContain("action=\"/language\"");
        assertThat(APP.signedIn(cast.teacherA()).get(log)).satisfies(LanguageIT::isSpanish);
        assertThat(APP.signedIn(cast.teacherB()).get("/account")).satisfies(LanguageIT::isEnglish);

        choose("", "Cel");
        assertThat(browser.get("/account")).satisfies(LanguageIT::isEnglish);
    }

    @Test
    void aChoiceThatIsNotOffered_changesNothing() {
        browser.signIn(cast.teacherA());

        Answer answer = choose("tlh", "Cel");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("<title>Error: ").contains("Choose a language and a scale");
        assertThat(choose("en", "K").status()).isEqualTo(422);
        assertThat(browser.header("Accept-Language", "es").get("/account")).satisfies(LanguageIT::isSpanish);
    }

    @Test
    void theForm_saysWhatIsWrong_inTheReadersLanguage() {
        browser.signIn(cast.teacherA());
        browser.header("Accept-Language", "es").get(log);

        Answer wrong = browser.post(log, "temperature", "fifty", "ph", "71", "by", "3A");
        Answer unusual = browser.post(log, "temperature", "54", "temperature_unit", "Cel", "by", "3A");

        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.body()).contains("Hay algo que corregir").contains("Temperatura: “fifty” no se entiende")
                .contains("pH va de 0 a 14; 71 no es posible").contains("value=\"3A\"");
        assertThat(unusual.body()).contains("¿Es correcto?").contains("Escribiste 54 °C en temperatura")
                .contains("No, fueron 54 °F");
    }

    @Test
    void theReceipt_andAPageThatIsNotThere_areInTheReadersLanguage() {
        browser.signIn(cast.teacherA());
        browser.header("Accept-Language", "es").get(log);

        Answer saved = browser.post(log, "temperature", "52", "by", "3A");

        String query = saved.location().substring(saved.location().indexOf('?'));
        assertThat(browser.get(log + query).body()).contains("temperatura 52 °F.").contains("Tu coordinación lo ve.");
        assertThat(browser.get("/tanks/nowhere")).satisfies(LanguageIT::isSpanish)
                .extracting(Answer::body).asString().contains("Aquí no hay nada.");
    }

    @Test
    void scripts_areAnsweredInEnglish_whateverTheyAccept() {
        Answer answer = browser.bearer(cast.tankA().token()).header("Accept-Language", "es")
                .header("Idempotency-Key", "one").postJson("/api/v1/tanks/" + cast.tankA().code() + "/readings",
                        "{\"measuredAt\":\"2026-01-12T14:05:00Z\",\"values\":[]}");

        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.body()).contains("The reading cannot be taken as it is.")
                .contains("There is nothing in this reading.");
    }

    @Test
    void theRounds_andTheHelp_areInTheReadersLanguage_withLimitsOnTheReadersScale() {
        browser.signIn(cast.coordinator());
        choose("es", "[degF]");

        assertThat(browser.get("/rounds").body()).contains("2 tanques en 2 escuelas. Probabilidad de cruzar un límite")
                .contains("Pedir una lectura").contains("data-label=\"Llevar o hacer\"");
        assertThat(browser.get("/rounds?for=car").body()).contains("Manos secas cerca de la electricidad");
        assertThat(browser.get("/rounds?asOf=2026-01-14").body())
                .contains("Esa mañana todavía no llega: elige una hasta el 13 de enero de 2026.");
        // US EPA Region 10, 2003: 18 °C
        assertThat(browser.get("/help").body()).contains("por encima de 64.4\u00a0°F").doesNotContain("°C");
    }

    @Test
    void theOffice_isInTheReadersLanguage_andSoIsWhatIsWrongWithAForm() {
        browser.signIn(cast.coordinator());
        choose("es", "Cel");

        assertThat(browser.get("/people").body()).contains("Agregar a alguien").contains("data-label=\"Función\"")
                .contains(">docente<").contains("todos los tanques");
        assertThat(browser.get("/places").body()).contains("2 escuelas, 2 tanques en uso")
                .contains("data-label=\"Agua de la llave, mg/L\"").contains("enfriador a 51.8\u00a0°F");
        assertThat(browser.get("/season").body()).contains("Temporada 2025-26: 200 de 200 vivos según la cuenta")
                .contains("200 huevos el 4 nov");
        browser.get("/season/new");
        assertThat(browser.post("/season", "name", "", "starts_on", "soon").body())
                .contains("<title>Error: Agregar una temporada").contains("Ponle un nombre a la temporada")
                .contains("El primer día: “soon” no es una fecha").contains("Falta el último día");
    }

    @Test
    void theSummary_isInTheReadersLanguage_butItsTableForProgramsIsNot() {
        browser.signIn(cast.coordinator());
        String summary = "/season/" + cast.season() + "/summary";
        String english = browser.get(summary + ".csv").body();
        choose("es", "Cel");

        assertThat(browser.get(summary).body()).contains("La cuenta de cada huevo").contains("1 tanque en 1 escuela");
        assertThat(browser.get(summary + ".csv").body()).isEqualTo(english);
    }

    @Test
    void aBoardKeptInOneLanguage_isNotShownInTheOther() {
        browser.signIn(cast.coordinator());
        String tag = browser.get("/rounds").header("etag").orElseThrow();
        assertThat(browser.header("If-None-Match", tag).get("/rounds").status()).isEqualTo(304);

        browser.header("Accept-Language", "es");

        assertThat(browser.get("/rounds").status()).isEqualTo(200);
    }

    private Answer choose(String language, String unit) {
        browser.get("/account");
        return browser.post("/account/speech", "language", language, "temperature_unit", unit);
    }

    private static void isSpanish(Answer page) {
        assertThat(page.body()).contains("<html lang=\"es\"").contains("Ir al contenido");
        assertThat(page.header("content-language")).contains("es");
        assertThat(page.header("vary")).hasValueSatisfying(vary ->
                assertThat(vary).contains("Accept-Language").contains("Cookie"));
    }

    private static void isEnglish(Answer page) {
        assertThat(page.body()).contains("<html lang=\"en\"").contains("Skip to the page");
        assertThat(page.header("content-language")).contains("en");
    }
}
