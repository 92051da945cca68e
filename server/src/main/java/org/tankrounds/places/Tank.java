package org.tankrounds.places;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A chilled aquarium and where it stands.
 *
 * @param code what people and files call it
 * @param zone the school's clock
 * @param elevationM height of the school above the sea, m; empty counts as sea level
 * @param filterStartedOn day since which the filter has had ammonia to live on
 * @param filterAreaM2 surface of the filter's media, m²
 * @param disinfectant none, chlorine or chloramine; empty where unknown
 * @param thermometerUnit UCUM code in which its class reads temperature
 * @param retiredAt from then on it is off the rounds
 */
public record Tank(
        int tankId,
        String code,
        Room room,
        ZoneId zone,
        OptionalDouble elevationM,
        int kitId,
        double volumeL,
        OptionalDouble chillerSetPointC,
        String filterKind,
        Optional<LocalDate> filterStartedOn,
        OptionalDouble filterAreaM2,
        OptionalDouble alkalinityMgPerL,
        OptionalDouble chlorideMgPerL,
        Optional<String> disinfectant,
        String thermometerUnit,
        Optional<Instant> retiredAt) {

    /** The room that the tank stands in. */
    public record Room(int classroomId, String classroom, String schoolCode, String school) {}

    public String classroom() {
        return room.classroom();
    }

    public String school() {
        return room.school();
    }

    public boolean hasChloramine() {
        return disinfectant.filter("chloramine"::equals).isPresent();
    }

    public boolean isInUseAt(Instant at) {
        return retiredAt.isEmpty() || retiredAt.get().isAfter(at);
    }
}
