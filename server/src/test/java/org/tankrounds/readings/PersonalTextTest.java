package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.readings.PersonalText.Find;
import org.tankrounds.readings.PersonalText.Sort;

class PersonalTextTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "write to maria.q@school.example please       | EMAIL | maria.q@school.example",
        "ring (605) 555-0147 if it stops              | PHONE | (605) 555-0147",
        "605-555-0147                                 | PHONE | 605-555-0147",
        "6055550147                                   | PHONE | 6055550147",
        "+44 20 7946 0018 at night                    | PHONE | +44 20 7946 0018",
        "call 555-0147                                | PHONE | call 555-0147",
        "Maria Lopez fed them                         | NAME  | Maria Lopez",
        "seen by Maria and the others                 | NAME  | by Maria",
        "lo vio por Íñigo                             | NAME  | por Íñigo",
        "Mr. Teasel says the pump hums                | NAME  | Mr. Teasel",
        "ask Ms Quill                                 | NAME  | Ms Quill",
        "Maria L.                                     | NAME  | Maria L",
        "The net is with O’Brien-Quill Ada Fernwhistle| NAME  | Ada Fernwhistle",
    })
    void whatTellsOfAPerson_isFound(String text, Sort sort, String found) {
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

    @ParameterizedTest
    @CsvSource({"custodian, true", "Night staff, true", "the custodian, true", "jonas, false", "JONAS, false",
        "李明, false", "custodian Bob, false", "555-0142 custodian 212 555 0142, false"})
    void onlyWordsThatAreNoNames_tellOfADutyAlone(String text, boolean isDuty) {
        assertThat(PersonalText.isDuty(text)).isEqualTo(isDuty);
    }
}
