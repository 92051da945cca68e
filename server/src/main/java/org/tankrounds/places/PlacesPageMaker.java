package org.tankrounds.places;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tankrounds.pages.KitsPage;
import org.tankrounds.pages.PlacesPage;
import org.tankrounds.pages.PlacesPage.RoomRow;
import org.tankrounds.pages.PlacesPage.SchoolBlock;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
import org.tankrounds.web.TypedNumber;

/** From places to the words and numbers that their pages print. */
final class PlacesPageMaker {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private PlacesPageMaker() {}

    static PlacesPage overview(List<School> schools, List<Tank> tanks, List<Kit> kits) {
        Map<Integer, String> kitNames = kits.stream().collect(Collectors.toMap(Kit::kitId, Kit::name));
        long inUse = tanks.stream().filter(tank -> tank.retiredAt().isEmpty()).count();
        String title = schools.isEmpty() ? "Add the first school"
                : count(schools.size(), "school") + ", " + count(inUse, "tank") + " in use";
        List<SchoolBlock> blocks = schools.stream().map(school -> block(school, tanks, kitNames)).toList();
        return new PlacesPage(title, blocks, count(kits.size(), "kit"));
    }

    static KitsPage kits(List<Kit> kits, List<Tank> tanks) {
        Map<Integer, Long> uses = tanks.stream()
                .filter(tank -> tank.retiredAt().isEmpty())
                .collect(Collectors.groupingBy(Tank::kitId, Collectors.counting()));
        return new KitsPage(kits.stream().map(kit -> kitRow(kit, uses.getOrDefault(kit.kitId(), 0L))).toList());
    }

    private static KitsPage.Row kitRow(Kit kit, long tanks) {
        List<KitsPage.Card> cards = kit.scales().stream()
                .map(scale -> new KitsPage.Card(CardNames.of(scale.analyte()),
                        scale.analyte() == Analyte.PH ? "" : CardNames.words(scale.form()),
                        KitForm.stepsText(scale)))
                .toList();
        String edit = Addresses.kit(kit.name());
        return new KitsPage.Row(kit.name(), tanks == 0 ? "no tank" : count(tanks, "tank"), cards, edit,
                edit.replace("/kit?kit=", "/new?like="));
    }

    private static SchoolBlock block(School school, List<Tank> tanks, Map<Integer, String> kitNames) {
        List<RoomRow> rows = new ArrayList<>();
        for (String room : school.classrooms()) {
            List<Tank> here = tanks.stream()
                    .filter(tank -> tank.room().schoolCode().equals(school.code()) && tank.classroom().equals(room))
                    .toList();
            if (here.isEmpty()) {
                rows.add(RoomRow.withoutTank(room, Addresses.room(school, room), Addresses.newTank(school, room)));
            }
            here.forEach(tank -> rows.add(row(school, tank, kitNames.get(tank.kitId()))));
        }
        String addTank = school.classrooms().isEmpty() ? "" : Addresses.newTank(school, school.classrooms().get(0));
        return new SchoolBlock(school.name(), "school-" + school.code(),
                school.details().place().orElse("where to drive: not written down"), clock(school),
                Addresses.school(school), Addresses.school(school) + "/rooms/new", addTank, rows);
    }

    private static RoomRow row(School school, Tank tank, String kit) {
        return new RoomRow(
                tank.classroom(), Addresses.room(school, tank.classroom()),
                tank.code(), Addresses.tank(tank), "",
                water(tank), filter(tank), tap(tank), kit,
                tank.retiredAt().map(at -> "retired " + DAY.format(at.atZone(tank.zone()))).orElse(""));
    }

    private static String clock(School school) {
        String height = school.details().elevationM().isPresent()
                ? ", " + TypedNumber.text(school.details().elevationM().getAsDouble(), 0) + " m above the sea" : "";
        return school.details().zone().getId().replace('_', ' ') + height;
    }

    private static String water(Tank tank) {
        UnitForm scale = UnitForm.of(tank.thermometerUnit());
        String chiller = tank.chillerSetPointC().isEmpty() ? "chiller setting unknown"
                : "chiller " + TypedNumber.text(Units.fromCanonical(Analyte.TEMPERATURE, scale,
                        tank.chillerSetPointC().getAsDouble(), Double.NaN, 0), 1)
                        + (scale.unit().equals("Cel") ? " °C" : " °F");
        return TypedNumber.text(tank.volumeL(), 0) + " L, " + chiller;
    }

    private static String filter(Tank tank) {
        String since = tank.filterStartedOn().map((Function<LocalDate, String>) DAY::format)
                .map(day -> ", since " + day).orElse(", start unknown");
        return TankForm.filterWords(tank.filterKind()) + since;
    }

    private static String tap(Tank tank) {
        String alkalinity = tank.alkalinityMgPerL().isPresent()
                ? "alkalinity " + TypedNumber.text(tank.alkalinityMgPerL().getAsDouble(), 0) : "alkalinity unknown";
        String chloride = tank.chlorideMgPerL().isPresent()
                ? "chloride " + TypedNumber.text(tank.chlorideMgPerL().getAsDouble(), 0)
                : "chloride unknown, counts as 5";
        String disinfectant = tank.disinfectant()
                .map(known -> known.equals("none") ? "no disinfectant" : known)
                .orElse("disinfectant unknown");
        return alkalinity + ", " + chloride + ", " + disinfectant;
    }

    private static String count(long count, String one) {
        return count + " " + one + (count == 1 ? "" : "s");
    }
}
