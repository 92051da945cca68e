package org.tankrounds.years;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a column of somebody's sheet can tell; the first name is that of the season summary's own file. */
enum PastColumn {
    LEVEL("level"),
    SCHOOL("school", "school_name", "escuela"),
    ROOM("classroom", "room", "aula", "salon", "sala"),
    TANK("tank", "tanque"),
    RECEIVED("eggs_received", "eggs", "received", "huevos", "huevos_recibidos"),
    MOVED_IN("moved_in"),
    DEAD_AS_EGGS("dead_as_eggs", "dead_eggs", "eggs_dead", "huevos_muertos"),
    DEAD_AS_SAC_FRY("dead_as_sac_fry", "dead_sac_fry", "sac_fry_dead", "alevines_muertos"),
    DEAD_FEEDING("dead_feeding", "dead_fish", "dead_fry", "fish_dead", "peces_muertos"),
    DEAD("dead", "deaths", "died", "muertos"),
    MOVED_OUT("moved_out"),
    THINNED("taken_out_early", "taken_out", "thinned", "sacados"),
    RELEASED("released", "liberados"),
    ALIVE("alive_by_count", "alive", "left", "vivos"),
    UNEXPLAINED("unexplained", "missing", "sin_explicar");

    private final List<String> names;

    PastColumn(String... names) {
        this.names = List.of(names);
    }

    String ownName() {
        return names.get(0);
    }

    /** By a heading as somebody wrote it: case, spaces and accents do not matter. */
    static Optional<PastColumn> of(String heading) {
        String plain = Normalizer.normalize(heading.strip().toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "_").replaceAll("^_|_$", "");
        return Arrays.stream(values()).filter(column -> column.names.contains(plain)).findFirst();
    }

    boolean isText() {
        return this == LEVEL || this == SCHOOL || this == ROOM || this == TANK;
    }
}
