package org.tankrounds.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tankrounds.pages.KitsPage;
import org.tankrounds.pages.PlacesPage;
import org.tankrounds.pages.PlacesPage.RoomRow;
import org.tankrounds.pages.PlacesPage.SchoolBlock;
import org.tankrounds.water.Analyte;
import org.tankrounds.water.UnitForm;
import org.tankrounds.water.Units;
import org.tankrounds.web.Scale;
import org.tankrounds.web.Speech;
import org.tankrounds.web.TypedNumber;

/** From places to the words and numbers that their pages print. */
final class PlacesPageMaker {
    private final Speech speech;

    PlacesPageMaker(Speech speech) {
        this.speech = speech;
    }

    PlacesPage overview(List<School> schools, List<Tank> tanks, List<Kit> kits) {
        Map<Integer, String> kitNames = kits.stream().collect(Collectors.toMap(Kit::kitId, Kit::name));
        long inUse = tanks.stream().filter(tank -> tank.retiredAt().isEmpty()).count();
        String title = schools.isEmpty() ? speech.say("places.first")
                : speech.say("places.title",
                        speech.say("places.schools", schools.size()), speech.say("places.inUse", inUse));
        List<SchoolBlock> blocks = schools.stream().map(school -> block(school, tanks, kitNames)).toList();
        return new PlacesPage(title, blocks, speech.say("places.kitsLink", kits.size()));
    }

    KitsPage kits(List<Kit> kits, List<Tank> tanks) {
        Map<Integer, Long> uses = tanks.stream()
                .filter(tank -> tank.retiredAt().isEmpty())
                .collect(Collectors.groupingBy(Tank::kitId, Collectors.counting()));
        return new KitsPage(speech.say("places.kits.title"),
                kits.stream().map(kit -> kitRow(kit, uses.getOrDefault(kit.kitId(), 0L))).toList());
    }

    private KitsPage.Row kitRow(Kit kit, long tanks) {
        List<KitsPage.Card> cards = kit.scales().stream()
                .map(scale -> new KitsPage.Card(speech.say(CardNames.of(scale.analyte())),
                        scale.analyte() == Analyte.PH ? "" : speech.say(CardNames.counts(scale.form())),
                        KitForm.stepsText(scale)))
                .toList();
        String edit = Addresses.kit(kit.name());
        String uses = tanks == 0 ? speech.say("places.kit.unused") : speech.say("places.kit.uses", tanks);
        return new KitsPage.Row(kit.name(), uses, cards, edit, edit.replace("/kit?kit=", "/new?like="));
    }

    private SchoolBlock block(School school, List<Tank> tanks, Map<Integer, String> kitNames) {
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
                school.details().place().orElseGet(() -> speech.say("places.whereUnknown")), clock(school),
                Addresses.school(school), Addresses.school(school) + "/rooms/new", addTank, rows);
    }

    private RoomRow row(School school, Tank tank, String kit) {
        return new RoomRow(
                tank.classroom(), Addresses.room(school, tank.classroom()),
                tank.code(), Addresses.tank(tank), "",
                water(tank), filter(tank), tap(tank), kit,
                tank.retiredAt().map(at -> speech.say("places.retired", day(at.atZone(tank.zone()).toLocalDate())))
                        .orElse(""));
    }

    private String clock(School school) {
        String zone = school.details().zone().getId().replace('_', ' ');
        return school.details().elevationM().isEmpty() ? zone
                : speech.say("places.clockAndHeight", zone,
                        TypedNumber.text(school.details().elevationM().getAsDouble(), 0));
    }

    /** The chiller as it was written down, on the scale of the class. */
    private String water(Tank tank) {
        String volume = TypedNumber.text(tank.volumeL(), 0);
        if (tank.chillerSetPointC().isEmpty()) {
            return speech.say("places.water.noChiller", volume);
        }
        double setPoint = Units.fromCanonical(Analyte.TEMPERATURE, UnitForm.of(tank.thermometerUnit()),
                tank.chillerSetPointC().getAsDouble(), Double.NaN, 0);
        return speech.say("places.water", volume, TypedNumber.text(setPoint, 1),
                Scale.ofUnit(tank.thermometerUnit()).sign());
    }

    private String filter(Tank tank) {
        String kind = speech.say(TankForm.filterName(tank.filterKind()));
        return tank.filterStartedOn().map(since -> speech.say("places.filterSince", kind, day(since)))
                .orElseGet(() -> speech.say("places.filterNoStart", kind));
    }

    private String tap(Tank tank) {
        String alkalinity = tank.alkalinityMgPerL().isEmpty() ? speech.say("places.tap.alkalinityUnknown")
                : speech.say("places.tap.alkalinity", TypedNumber.text(tank.alkalinityMgPerL().getAsDouble(), 0));
        String chloride = tank.chlorideMgPerL().isEmpty() ? speech.say("places.tap.chlorideUnknown")
                : speech.say("places.tap.chloride", TypedNumber.text(tank.chlorideMgPerL().getAsDouble(), 0));
        return speech.say("places.tap", alkalinity, chloride,
                speech.say("places.tap.disinfectant." + tank.disinfectant().orElse(TankForm.UNKNOWN)));
    }

    private String day(LocalDate day) {
        return speech.written("time.pattern.dateAndYear", day);
    }
}
