package org.tankrounds.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.tankrounds.testing.Browserless;
import org.tankrounds.testing.Browserless.Answer;
import org.tankrounds.testing.Cast;
import org.tankrounds.testing.Cast.TankOfCast;
import org.tankrounds.testing.TestApp;

/** Every figure of the summary leads to the rows that it is made of, and they add up to it. */
final class SummaryRowsIT {
    private static final TestApp APP = TestApp.shared();
    private static final Pattern LINK =
            Pattern.compile("href=\"(/season/[^\"]*/summary/rows/[^\"]*)\"[^>]*>([^<]*)</a>");
    private static final Pattern NUMBER = Pattern.compile("<td class=\"number\">([^<]*)</td>");

    private final Cast cast = Cast.add(APP.transactions(), "Clerks of rows");
    private final Browserless coordinator = APP.signedIn(cast.coordinator());
    private final String summary = "/season/" + cast.season() + "/summary";

    @BeforeEach
    void aSeasonWithOneOfEverything() {
        read(cast.tankA(), "2025-11-10T12:00:00Z", "deaths", "12", "1");
        read(cast.tankA(), "2025-11-10T15:00:00Z", "deaths", "3", "1");
        read(cast.tankA(), "2025-11-11T12:00:00Z", "temperature", "13.4", "Cel");
        read(cast.tankA(), "2025-11-12T12:00:00Z", "temperature", "11", "Cel");
        read(cast.tankA(), "2025-12-28T12:00:00Z", "deaths", "2", "1");
        read(cast.tankA(), "2026-01-08T12:00:00Z", "nitrite", "0.4", "mg/L", "N");
        read(cast.tankA(), "2026-01-08T13:00:00Z", "water_change", "30", "%");
        read(cast.tankA(), "2026-01-08T13:30:00Z", "total_ammonia", "0.5", "mg/L", "N");
        read(cast.tankB(), "2026-01-08T13:00:00Z", "temperature", "11", "Cel");
        String here = count(cast.tankA());
        write(here, "hatched", "fish", "180", "day", "2025-11-28");
        write(here, "moved", "fish", "20", "to", cast.tankB().code(), "day", "2026-01-09");
        write(here, "counted", "fish", "150", "day", "2026-01-10");
        write(here, "thinned", "fish", "10", "place", "the agency", "day", "2026-01-11");
        write(here, "released", "fish", "40", "place", "Lower bridge", "approval", "P-8", "day", "2026-01-12");
        String tank = "/tanks/" + cast.tankA().code();
        coordinator.get(tank + "/class");
        coordinator.post(tank + "/tasks", "task", "Read the pH twice");
        coordinator.get(tank + "/visits");
        coordinator.post(tank + "/visits", "deeds", "changed_water", "day", "2026-01-12");
        String cause = here + "/deaths/2025-11-10";
        coordinator.get(cause);
        coordinator.post(cause, "cause", "fungus");
    }

    @Test
    void everyFigure_isTheSumOfTheRowsThatItLeadsTo_downToTheReadings() {
        String page = coordinator.get(summary).body();
        List<MatchResult> links = LINK.matcher(page).results().toList();
        assertThat(links.size())
                .as("ledger, stages, water, spells, actions: for two tanks, two schools and the chapter")
                .isGreaterThan(60);
        Set<String> codes = new LinkedHashSet<>();
        for (MatchResult link : links) {
            String address = link.group(1).replace("&amp;", "&").replaceFirst("#.*", "");
            codes.add(address.replaceAll(".*/rows/([^?]*).*", "$1"));
            Answer rows = coordinator.get(address);
            assertThat(rows.status()).as(address).isEqualTo(200);
            long total = assertAddsUp(address, rows);
            assertThat(total).as("%s says %s", address, link.group(2)).isEqualTo(figure(address, link.group(2), rows));
            LINK.matcher(rows.body()).results().map(found -> found.group(1).replace("&amp;", "&"))
                    .filter(deeper -> deeper.contains("tank=")).limit(3)
                    .forEach(deeper -> assertAddsUp(deeper, coordinator.get(deeper)));
        }
        assertThat(codes).as("only causes that nobody named have no link").containsAll(
                SummaryFigure.list().stream().filter(figure -> figure.cause().isEmpty()).map(SummaryFigure::code)
                        .toList()).contains("cause-fungus");
    }

    @Test
    void rowsOfATank_leadToWhatIsBehindThem() {
        String dead = text(coordinator.get(rows("dead-as-eggs")));
        assertThat(dead).contains("Dead as eggs: Alderwhistle School, Room 12")
                .contains("10 Nov 2025 Found dead as eggs fungus")
                .contains("15 Look Together, as in the summary 15");
        Answer day = coordinator.get(rows("readings") + "&day=2025-11-10");
        assertThat(text(day)).contains("fish found dead 12").contains("Together, as in the summary 2");
        assertThat(day.body()).contains("/tanks/" + cast.tankA().code() + "/readings/");
        assertThat(text(coordinator.get(rows("temperature"))))
                .contains("11 Nov 2025 Beyond the limit 1 value · worst 13.4 °C 0")
                .contains("12 Nov 2025 Within the limit");
        assertThat(text(coordinator.get(rows("released")))).contains("Released: Lower bridge approval P-8");
        assertThat(text(coordinator.get(rows("unexplained")))).contains("Counted again: 150 found");
        assertThat(text(coordinator.get(rows("asked")))).contains("Read the pH twice asked by Cora Weirthimble");
        assertThat(text(coordinator.get(rows("visits")))).contains("12 Jan 2026 changed water Cora Weirthimble");
    }

    @Test
    void theSummary_tellsStagesReleasesSpellsAndActions() {
        String page = text(coordinator.get(summary));
        assertThat(page).contains("How many outlived each stage").contains("180 of 200")
                .contains("hatch counted in 1 tank");
        assertThat(page).contains("Lower bridge approval P-8 40")
                .contains("12 Jan 2026 Alderwhistle School, Room 12 40 one by one");
        assertThat(page).contains("Alderwhistle School, Room 12 Temperature 11 Nov 2025 1 of 1 13.4 °C, 11 Nov 2025");
        assertThat(page).contains("Tasks asked").contains("Water changes noted");
    }

    @Test
    void whatIsNotThere_isNotFound() {
        for (String path : List.of("/rows/eaten", "/rows/dead?tank=nope12", "/rows/dead?school=nope12",
                "/rows/dead?tank=" + APP.elsewhere().tankA().code(),
                "/rows/readings?tank=" + cast.tankA().code() + "&day=tomorrow",
                "/rows/readings?tank=" + cast.tankA().code() + "&day=+999999999-12-31")) {
            assertThat(coordinator.get(summary + path).status()).as(path).isEqualTo(404);
        }
        assertThat(APP.signedIn(cast.teacherA()).get(rows("dead")).status()).isEqualTo(404);
    }

    /** Shares are made of two numbers: the rows are those of the first, which stands in the row of their sum. */
    private static long figure(String address, String text, Answer rows) {
        boolean isOfSeveral =
                address.matches(".*/rows/(survival|stage-.*|temperature|un-ionised-ammonia|nitrite)(\\?.*)?");
        String days = text.replaceFirst("^(\\d+) of \\d+ days$", "$1");
        if (isOfSeveral && !days.matches("\\d+")) {
            return total(rows);
        }
        return number(days.replaceFirst(",? \\d+ corrected$", ""));
    }

    private static long assertAddsUp(String address, Answer rows) {
        List<Long> numbers = new ArrayList<>(NUMBER.matcher(rows.body()).results()
                .map(one -> number(one.group(1))).toList());
        long total = numbers.remove(numbers.size() - 1);
        assertThat(numbers.stream().mapToLong(Long::longValue).sum()).as(address).isEqualTo(total);
        return total;
    }

    private static long total(Answer rows) {
        return NUMBER.matcher(rows.body()).results().map(one -> number(one.group(1))).reduce((one, next) -> next)
                .orElseThrow();
    }

    private static long number(String text) {
        return Long.parseLong(text.strip().replace("\u2212", "-").replace(",", ""));
    }

    private String rows(String figure) {
        return summary + "/rows/" + figure + "?tank=" + cast.tankA().code();
    }

    private String count(TankOfCast tank) {
        return "/season/" + cast.season() + "/tanks/" + tank.code() + "/count";
    }

    private void read(TankOfCast tank, String at, String analyte, String value, String unit, String... as) {
        String form = as.length == 0 ? "" : ", \"as\": \"" + as[0] + "\"";
        assertThat(APP.bearer(tank.token()).header("Idempotency-Key", "\"" + UUID.randomUUID() + "\"")
                .postJson("/api/v1/tanks/" + tank.code() + "/readings", """
                        {"measuredAt": "%s", "values": [{"analyte": "%s", "value": %s, "unit": "%s"%s}]}
                        """.formatted(at, analyte, value, unit, form)).status()).isEqualTo(201);
    }

    private void write(String count, String kind, String... fields) {
        List<String> all = new ArrayList<>(List.of("method", "one_by_one"));
        all.addAll(List.of(fields));
        String page = coordinator.get(count + "/" + kind).body();
        String form = Pattern.compile("action=\"([^\"]*/count/" + kind + "\\?form=[^\"]*)\"").matcher(page).results()
                .findFirst().orElseThrow().group(1).replace("&amp;", "&");
        Answer answer = coordinator.post(form, all.toArray(String[]::new));
        assertThat(answer.status()).as(text(answer)).isEqualTo(303);
    }

    private static String text(Answer answer) {
        return answer.body().replaceAll("(?s)<script.*?</script>", " ").replaceAll("<[^>]*>", " ")
                .replace("&nbsp;", " ").replace("&#39;", "'").replace("&amp;", "&").replaceAll("\\s+", " ");
    }
}
