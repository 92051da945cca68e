package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.water.Analyte;
import org.tankrounds.words.Saying;
import org.tankrounds.words.Words;

final class TypedValueTest {

    @ParameterizedTest
    @CsvSource({"0.25,0.25", "'0,25',0.25", "0.25 mg/L,0.25", "0.25mg/l,0.25", "' 0.25 ppm ',0.25", ".5,0.5",
            "'0,250',0.250",
            "5.,5.0", "0.30,0.30", "12,12"})
    void readsNumbersAsPeopleWriteThem(String typed, String number) {
        Optional<TypedValue> value = TypedValue.read(Analyte.NITRITE, typed, sentence -> {});
        assertThat(value).map(TypedValue::number).contains(new BigDecimal(number));
    }

    @ParameterizedTest
    @CsvSource({"52 F,[degF]", "52°F,[degF]", "52 f.,[degF]", "11 °C,Cel", "11c,Cel",
            "11 degrees Celsius,Cel"})
    void aTypedUnitIsKept(String typed, String unit) {
        Optional<TypedValue> value = TypedValue.read(Analyte.TEMPERATURE, typed, sentence -> {});
        assertThat(value).flatMap(TypedValue::unit).contains(unit);
    }

    @ParameterizedTest
    @ValueSource(strings =
            {"fifty", "52 54", "52\t7.2\t0.5", "52;54", "1,234", "12,345,678", "NaN", "1e3", "--5", "5-",
            "52 mg/L", "0x10", "5 5 F", "999999999999", "٥٢"})
    void whatIsNotOneNumber_isRefusedWithASentence(String typed) {
        List<Saying> sentences = new ArrayList<>();
        assertThat(TypedValue.read(Analyte.TEMPERATURE, typed, sentences::add)).isEmpty();
        assertThat(sentences).hasSize(1)
                .allMatch(sentence -> Words.english().say(sentence).startsWith("Temperature: "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "\u00a0"})
    void nothingTyped_isNothing(String typed) {
        List<Saying> sentences = new ArrayList<>();
        assertThat(TypedValue.read(Analyte.PH, typed, sentences::add)).isEmpty();
        assertThat(sentences).isEmpty();
    }
}
