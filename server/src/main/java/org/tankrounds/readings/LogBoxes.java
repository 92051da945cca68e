package org.tankrounds.readings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitScale;
import org.tankrounds.places.Tank;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;

/** Which analytes the form of a tank asks for, in the order in which a class works, and in which unit and form. */
public final class LogBoxes {
    static final List<Analyte> HUSBANDRY = List.of(Analyte.DEATHS, Analyte.FEED, Analyte.WATER_CHANGE);
    static final List<Analyte> ALWAYS =
            List.of(Analyte.PH, Analyte.TOTAL_AMMONIA, Analyte.NITRITE, Analyte.NITRATE);
    private static final List<Analyte> SELDOM =
            List.of(Analyte.DISSOLVED_OXYGEN, Analyte.ALKALINITY, Analyte.HARDNESS,
                    Analyte.CHLORIDE, Analyte.CHLORINE);

    private final Tank tank;
    private final Kit kit;

    public LogBoxes(Tank tank, Kit kit) {
        this.tank = tank;
        this.kit = kit;
    }

    /** What few classes measure: boxes of their own, and whatever else the kit has a card for. */
    List<Analyte> more() {
        Stream<Analyte> cards = kit.scales().stream().map(KitScale::analyte);
        return Stream.concat(SELDOM.stream(), cards)
                .filter(analyte -> !ALWAYS.contains(analyte) && !HUSBANDRY.contains(analyte))
                .filter(analyte -> analyte != Analyte.TEMPERATURE)
                .distinct()
                .toList();
    }

    /** What a sheet of paper has a column for besides temperature and husbandry. */
    List<Analyte> onPaper() {
        return Stream.concat(ALWAYS.stream(), more().stream()
                .filter(analyte -> kit.scale(analyte).isPresent())).toList();
    }

    /** pH cards show one decimal throughout; the others as few as they can. */
    static List<String> stepsInWords(KitScale scale) {
        return scale.steps().stream().map(step -> {
            String plain = BigDecimal.valueOf(step).stripTrailingZeros().toPlainString();
            return scale.analyte() == Analyte.PH && !plain.contains(".") ? plain + ".0" : plain;
        }).toList();
    }

    /** What is read from a card, but may be read by a meter too. */
    List<Analyte> typed() {
        return Stream.concat(ALWAYS.stream(), more().stream())
                .filter(analyte -> kit.scale(analyte).isPresent()).toList();
    }

    Map<Analyte, UnitForm> forms() {
        List<Analyte> all = new ArrayList<>(List.of(Analyte.TEMPERATURE));
        all.addAll(HUSBANDRY);
        all.addAll(ALWAYS);
        all.addAll(more());
        Map<Analyte, UnitForm> forms = new LinkedHashMap<>();
        all.forEach(analyte -> forms.put(analyte, form(analyte)));
        return forms;
    }

    /** In which its class reads it. */
    public UnitForm form(Analyte analyte) {
        if (analyte == Analyte.TEMPERATURE) {
            return UnitForm.of(tank.thermometerUnit());
        }
        return kit.scale(analyte).map(KitScale::form).orElse(analyte.canonical());
    }
}
