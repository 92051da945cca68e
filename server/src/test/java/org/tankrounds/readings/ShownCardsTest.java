package org.tankrounds.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

class ShownCardsTest {
    private static final Kit THEN = new Kit(7, "Strips", List.of(
            new KitScale(Analyte.PH, UnitForm.of("[pH]"), List.of(6.0, 6.5, 7.0)),
            new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "NO2"), List.of(0.0, 0.15, 10.0))));
    private static final Kit NOW = new Kit(7, "Strips", List.of(
            new KitScale(Analyte.NITRITE, new UnitForm("mg/L", "N"), List.of(0.0, 1.0))));

    @Test
    void cards_comeBackAsTheyWereShown() {
        assertThat(ShownCards.text(THEN)).isEqualTo("ph:[pH]:6 6.5 7;nitrite:mg/L as NO2:0 0.15 10");
        assertThat(ShownCards.in(NOW, ShownCards.text(THEN))).isEqualTo(THEN);
    }

    @Test
    void aFormFromBefore_hasTheCardsOfNow() {
        assertThat(ShownCards.in(NOW, null)).isEqualTo(NOW);
        assertThat(ShownCards.in(NOW, "")).isEqualTo(NOW);
        assertThat(ShownCards.isReadable("")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nitrite", "nitrite:mg/L as NO2", "nitrite:mg/L as NH3:0 1", "deaths:1:0 1",
            "gold:mg/L:0 1", "nitrite:mg/L as NO2:0", "nitrite:mg/L as NO2:1 0", "nitrite:mg/L as NO2:1 1",
            "nitrite:mg/L as NO2:0 -1", "nitrite:mg/L as NO2:0 1e9", "nitrite:mg/L as NO2:0 NaN", "temperature:Cel:0 1",
            ";", "a;b", "::"})
    void whatIsNoCard_isNotRead(String text) {
        assertThat(ShownCards.isReadable(text)).isFalse();
        assertThat(ShownCards.in(NOW, text)).isEqualTo(NOW);
    }
}
