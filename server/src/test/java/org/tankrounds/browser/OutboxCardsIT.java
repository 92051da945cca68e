package org.tankrounds.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tankrounds.db.schema.Tables.KITS;
import static org.tankrounds.db.schema.Tables.KIT_SCALES;
import static org.tankrounds.db.schema.Tables.MEASUREMENTS;
import static org.tankrounds.db.schema.Tables.TANKS;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A card's number that waits on a device while the kit is edited means what the class saw beside it. */
class OutboxCardsIT extends AtADevice {
    private static final String CHOSEN = "[name=nitrite][value='0.3']";
    /** 0.3 mg/L as NO2, in mg N/L; from atomic masses N 14.0067, O 15.9994. */
    private static final float STORED = 0.3f * 0.304457f;

    @Test
    void keptBeforeTheKitIsEdited_countsAsItWasShown() {
        keep("52");
        editKit();
        device.offline(false);

        awaitNitrite();
    }

    @Test
    void putRightAfterTheKitIsEdited_isShownWithTheCardsOfThen() {
        keep("fifty");
        editKit();
        device.offline(false);
        Page page = device.page();
        page.navigate("/outbox");
        page.getByText("Open and fix").click();
        assertThat(page.getByLabel("Temperature")).hasValue("fifty");
        assertThat(page.locator(CHOSEN)).isChecked();
        assertThat(page.locator("fieldset:has(#nitrite)")).containsText("mg/L as NO₂");

        device.write("52");
        awaitNitrite();
    }

    @Test
    void putRightAfterTheThermometerIsChanged_leavesTheTankAsItIs() {
        keep("fifty");
        app.transactions().inChapter(cast.chapterId(),
                tx -> tx.update(TANKS).set(TANKS.THERMOMETER_UNIT, "Cel").execute());
        device.offline(false);
        device.page().navigate("/outbox");
        device.page().getByText("Open and fix").click();
        assertThat(device.page().locator("[name=temperature_unit][value='[degF]']")).isChecked();

        device.write("52");
        awaitNitrite();
        String unit = app.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(TANKS)
                .where(TANKS.TANK_ID.eq(cast.tankA().tankId())).fetchSingle(TANKS.THERMOMETER_UNIT));
        assertThat(unit).isEqualTo("Cel");
    }

    private void keep(String temperatureF) {
        device.signIn(cast.teacherA()).openForm(cast.tankA()).offline(true);
        device.page().locator(CHOSEN).check();
        device.write(temperatureF);
    }

    private void editKit() {
        app.transactions().inChapter(cast.chapterId(), tx -> {
            tx.update(KIT_SCALES).set(KIT_SCALES.COUNTS_AS, "N").where(KIT_SCALES.ANALYTE.eq("nitrite")).execute();
            return tx.update(KITS).set(KITS.NAME, "Card B").execute();
        });
    }

    private void awaitNitrite() {
        device.page().waitForCondition(() -> !nitrite().isEmpty());
        assertThat(nitrite()).hasSize(1);
        assertThat(nitrite().get(0)).isCloseTo(STORED, within(1e-6f));
    }

    private List<Float> nitrite() {
        return app.transactions().inChapter(cast.chapterId(), tx -> tx.selectFrom(MEASUREMENTS)
                .where(MEASUREMENTS.ANALYTE.eq("nitrite")).fetch(MEASUREMENTS.VALUE));
    }
}
