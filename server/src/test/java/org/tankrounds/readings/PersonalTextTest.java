package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.readings.PersonalText.Find;

class PersonalTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "write to maria.q@school.example please       | an e-mail address | maria.q@school.example",
        "ring (605) 555-0147 if it stops              | a phone number    | (605) 555-0147",
        "605-555-0147                                 | a phone number    | 605-555-0147",
        "6055550147                                   | a phone number    | 6055550147",
        "+44 20 7946 0018 at night                    | a phone number    | +44 20 7946 0018",
        "call 555-0147                                | a phone number    | call 555-0147",
        "Maria Lopez fed them                         | a person’s name   | Maria Lopez",
        "seen by Maria and the others                 | a person’s name   | by Maria",
        "lo vio por Íñigo                             | a person’s name   | por Íñigo",
        "Mr. Teasel says the pump hums                | a person’s name   | Mr. Teasel",
        "ask Ms Quill                                 | a person’s name   | Ms Quill",
        "Maria L.                                     | a person’s name   | Maria L",
        "The net is with O’Brien-Quill Ada Fernwhistle| a person’s name   | Ada Fernwhistle",
    })
    void whatTellsOfAPerson_isFound(String text, String sort, String found) {
        assertThat(PersonalText.in(text)).contains(new Find(sort, found));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "", "period 3", "Period 3", "7th Grade", "Room 12", "Ms", "Team Otter", "Blue Herons", "Class B", "Period A",
        "a little cloudy", "A Little Cloudy", "Water Cloudy Today", "Fed Tuesday. Changed Water.",
        "Rainbow Trout", "Temp 52.3, pH 7.2, NH3 0.25, NO2 0.1", "7.0 7.2 7.2 0.25 0.5 52.3 51.8", "2026-01-12 14:05",
        "12/01/2026 08:15", "208 L, 150-1000 mL, 20000 eggs", "lot 4471100231 of 200",
        "changed by Friday", "counted by Period 3",
        "Fish Gasping At Surface", "The Chiller stopped on Monday Morning", "Vitamin C", "Alderwhistle School",
        "@ noon",
        "Agua Turbia", "cambio por la tarde", "readings 101, 102, 1034, 1035", "0.25 mg/L at 1045", "WATER CHANGED",
    })
    void whatTheTradeWrites_isLeftAlone(String text) {
        assertThat(PersonalText.in(text)).isEmpty();
    }

    @Test
    void eachIsNamedOnce() {
        assertThat(PersonalText.in("Maria Lopez, by Maria Lopez, maria@x.example, maria@x.example"))
                .extracting(Find::text).containsExactly("maria@x.example", "by Maria Lopez");
    }
}
