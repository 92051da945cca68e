package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tankrounds.readings.SenmlPack.Resolved;
import org.tankrounds.web.FieldError;

/** Records as RFC 8428 has them: examples of its section 5.1 (looked up), and its rules by section. */
class SenmlPackTest {
    private static final Instant NOW = Instant.parse("2026-01-13T14:00:00Z");

    @Test
    void oneValueWithoutATime_isOfNow() {
        // RFC 8428, 5.1.1
        List<Resolved> pack = resolve("[{\"n\":\"urn:dev:ow:10e2073a01080063\",\"u\":\"Cel\",\"v\":23.1}]");

        assertThat(pack).singleElement().satisfies(one -> {
            assertThat(one.name()).isEqualTo("urn:dev:ow:10e2073a01080063");
            assertThat(one.unit()).isEqualTo("Cel");
            assertThat(one.value().orElseThrow()).isEqualByComparingTo("23.1");
            assertThat(one.time()).isEqualTo(NOW);
            assertThat(one.exact()).isFalse();
        });
    }

    @Test
    void baseNameTimeAndUnit_holdForTheRecordsBehind() {
        // RFC 8428, 5.1.2
        List<Resolved> pack = resolve("""
                [{"bn":"urn:dev:ow:10e2073a0108006:","bt":1.276020076001e+09,"bu":"A","bver":5,
                  "n":"voltage","u":"V","v":120.1},
                 {"n":"current","t":-5,"v":1.2}, {"n":"current","t":-4,"v":1.3}, {"n":"current","t":-3,"v":1.4},
                 {"n":"current","t":-2,"v":1.5}, {"n":"current","t":-1,"v":1.6}, {"n":"current","v":1.7}]""");

        assertThat(pack).extracting(Resolved::name).startsWith("urn:dev:ow:10e2073a0108006:voltage",
                "urn:dev:ow:10e2073a0108006:current");
        assertThat(pack).extracting(Resolved::unit).containsExactly("V", "A", "A", "A", "A", "A", "A");
        // 1276020076.001 s since 1970, worked out with date -u -d @1276020076
        assertThat(pack.get(0).time()).isEqualTo("2010-06-08T18:01:16.001Z");
        assertThat(pack).extracting(Resolved::time).element(1).isEqualTo(Instant.parse("2010-06-08T18:01:11.001Z"));
        assertThat(pack).allMatch(Resolved::exact);
    }

    @Test
    void aMovingSensor_isResolvedRecordByRecord() {
        // RFC 8428, 5.1.3, its beginning
        List<Resolved> pack = resolve("""
                [{"bn":"urn:dev:ow:10e2073a01080063","bt":1.320067464e+09,"bu":"%RH","v":20},
                 {"u":"lon","v":24.30621}, {"u":"lat","v":60.07965}, {"t":60,"v":20.3}]""");

        assertThat(pack).extracting(Resolved::unit).containsExactly("%RH", "lon", "lat", "%RH");
        // 1320067464 s since 1970, worked out with date -u -d @1320067464
        assertThat(pack.get(3).time()).isEqualTo("2011-10-31T13:25:24Z");
    }

    @Test
    void timesBelowTwoToThe28th_areRelativeToNow() {
        // RFC 8428, 4.5.3
        List<Resolved> pack = resolve("""
                [{"bn":"probe:","n":"temperature","t":-600.5,"v":11}, {"n":"temperature","bt":-60,"v":11},
                 {"n":"temperature","t":30,"v":11}]""");

        assertThat(pack).extracting(Resolved::time).containsExactly(
                NOW.minusMillis(600_500), NOW.minusSeconds(60), NOW.minusSeconds(30));
        assertThat(pack).noneMatch(Resolved::exact);
    }

    @Test
    void aBaseValue_isAdded_andStandsForAMissingOne() {
        // RFC 8428, 4.5.4
        List<Resolved> pack = resolve("[{\"n\":\"t\",\"bv\":10,\"v\":1.5},{\"n\":\"t\",\"v\":-0.25},{\"n\":\"t\"}]");

        assertThat(pack).extracting(one -> one.value().orElseThrow().toPlainString())
                .containsExactly("11.5", "9.75", "10");
    }

    @Test
    void whatNobodyKnows_isPassedOver_unlessItMustBeUnderstood() {
        // RFC 8428, 4.4
        assertThat(errors("[{\"n\":\"t\",\"v\":1,\"foo\":{\"a\":1},\"ut\":30,\"s\":4}]")).isEmpty();
        assertThat(errors("[{\"n\":\"t\",\"v\":1},{\"n\":\"t\",\"v\":1,\"foo_\":1}]"))
                .extracting(FieldError::field).containsExactly("/1/foo_");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "{}                                                     | ''",
        "[]                                                     | ''",
        "[5]                                                    | /0",
        "[{\"n\":\"t\",\"v\":\"11\"}]                           | /0/v",
        "[{\"n\":\"t\",\"v\":1e400}]                            | /0/v",
        "[{\"n\":7,\"v\":1}]                                    | /0/n",
        "[{\"v\":1}]                                            | /0/n",
        "[{\"n\":\"_t\",\"v\":1}]                               | /0/n",
        "[{\"n\":\"t t\",\"v\":1}]                              | /0/n",
        "[{\"n\":\"t\"}]                                        | /0/v",
        "[{\"n\":\"t\",\"s\":3}]                                | /0/v",
        "[{\"n\":\"t\",\"v\":3,\"vs\":\"a\"}]                   | /0",
        "[{\"n\":\"t\",\"vb\":1}]                               | /0/vb",
        "[{\"n\":\"t\",\"v\":1,\"bver\":11}]                    | /0/bver",
        "[{\"n\":\"t\",\"v\":1,\"bver\":0}]                     | /0/bver",
        "[{\"n\":\"t\",\"v\":1,\"bver\":10},{\"bver\":5,\"n\":\"t\",\"v\":1}] | ''",
        "[{\"n\":\"t\",\"v\":1,\"t\":700000}]                   | /0/t",
        "[{\"n\":\"t\",\"v\":1,\"t\":400000000}]                | /0/t",
        "[{\"n\":\"t\",\"v\":1,\"t\":99999999999999}]           | /0/t"})
    void whatIsNoPack_isSaidWithItsPlace(String json, String pointer) {
        assertThat(errors(json)).extracting(FieldError::field).containsExactly(pointer);
    }

    private static List<Resolved> resolve(String json) {
        Faults faults = new Faults();
        List<Resolved> resolved = SenmlPack.resolve(JsonText.read(json.getBytes(StandardCharsets.UTF_8)), NOW, faults);
        assertThat(faults.errors()).isEmpty();
        return resolved;
    }

    private static List<FieldError> errors(String json) {
        Faults faults = new Faults();
        SenmlPack.resolve(JsonText.read(json.getBytes(StandardCharsets.UTF_8)), NOW, faults);
        return faults.errors();
    }
}
