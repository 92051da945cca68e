package org.tankrounds.readings;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import org.tankrounds.places.Kit;
import org.tankrounds.places.KitRepository;
import org.tankrounds.places.Tank;
import org.tankrounds.places.TankRepository;
import org.tankrounds.web.Caller;

/** The tanks that one batch names, each looked up once. */
final class BatchTanks {
    private static final int MOST_REMEMBERED = 10_000;

    /** @param kit the tank's */
    record Place(Tank tank, Kit kit) {}

    private final Caller caller;
    private final TankRepository tanks;
    private final KitRepository kits;
    private final Map<String, Optional<Place>> places = new HashMap<>();
    private final Map<Integer, Kit> kitsById = new HashMap<>();

    BatchTanks(Caller caller, TankRepository tanks, KitRepository kits) {
        this.caller = caller;
        this.tanks = tanks;
        this.kits = kits;
    }

    Optional<Place> find(DSLContext tx, String code) {
        if (places.size() > MOST_REMEMBERED) {
            places.clear();
        }
        return places.computeIfAbsent(code, wanted -> tanks.find(tx, caller, wanted)
                .map(tank -> new Place(tank, kit(tx, tank.kitId()))));
    }

    private Kit kit(DSLContext tx, int kitId) {
        return kitsById.computeIfAbsent(kitId, id -> kits.get(tx, caller.chapterId(), id));
    }
}
