package org.tankrounds.rounds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tankrounds.fish.Development;
import org.tankrounds.fish.Stage;
import org.tankrounds.forecast.Forecast;
import org.tankrounds.forecast.Limits;
import org.tankrounds.forecast.Reason;
import org.tankrounds.pages.TankPage.Fact;
import org.tankrounds.places.Tank;
import org.tankrounds.web.Formats;

/** What is taken for true about a tank, and what would narrow it most. */
final class TankHolding {
    private final Formats formats;

    TankHolding(Formats formats) {
        this.formats = formats;
    }

    List<Fact> facts(TankInput input, Optional<TankForecast> row, Optional<Development> development) {
        Tank tank = input.tank();
        List<Fact> facts = new ArrayList<>();
        row.ifPresent(forecast -> facts.add(new Fact("Fish", fish(forecast.forecast(), input))));
        development.ifPresent(lot -> facts.add(new Fact("Stage", stage(lot))));
        facts.add(new Fact("Water", water(tank)));
        facts.add(new Fact("Chiller", tank.chillerSetPointC().isPresent()
                ? "set to " + Formats.number(tank.chillerSetPointC().getAsDouble(), 1) + " °C"
                : "set-point unknown"));
        facts.add(new Fact("Filter", tank.filterKind().replace('_', ' ')
                + tank.filterStartedOn().map(day -> ", fed since "
                        + formats.date(day.atStartOfDay(tank.zone()).toInstant())).orElse("")));
        return facts;
    }

    /** A sentence, or empty where nothing in particular is missing. */
    String narrows(TankInput input, Optional<TankForecast> row) {
        List<String> wanted = new ArrayList<>();
        if (input.lot().isEmpty()) {
            wanted.add("how many eggs came, and when");
        }
        row.ifPresent(forecast -> forecast.forecast().reasons().forEach(reason -> {
            if (reason.kind() == Reason.Kind.NO_READINGS || reason.kind() == Reason.Kind.SILENCE) {
                wanted.add("a reading of anything");
            } else if (reason.kind() == Reason.Kind.SERIES_NOT_READ) {
                reason.driver().ifPresent(series -> wanted.add("a reading of " + Levels.inSentence(series)));
            }
        }));
        if (input.tank().chlorideMgPerL().isEmpty()) {
            wanted.add("the chloride of the tap water");
        }
        if (input.tank().alkalinityMgPerL().isEmpty()) {
            wanted.add("the alkalinity of the tap water");
        }
        if (input.lot().isPresent() && input.lot().get().thermalUnitsC().isEmpty()) {
            wanted.add("the eggs' degree-days on arrival");
        }
        return wanted.isEmpty() ? "" : Analytes.list(wanted.subList(0, Math.min(2, wanted.size())));
    }

    private static String fish(Forecast forecast, TankInput input) {
        String kind = forecast.stage() == Stage.EGG ? "eggs" : "fish";
        String alive = forecast.fishAlive() + " " + kind;
        return input.lot().map(lot -> alive + " believed alive, of " + lot.eggs() + " eggs")
                .orElse("no eggs written down yet, counted as " + alive);
    }

    private String stage(Development lot) {
        return switch (lot.stageAt(formats.now())) {
            case EGG -> "eggs; hatch about " + formats.date(lot.hatchAt());
            case SAC_FRY -> "sac fry; first feeding about " + formats.date(lot.firstFeedingAt());
            case FEEDING -> "feeding since about " + formats.date(lot.firstFeedingAt());
        };
    }

    private static String water(Tank tank) {
        List<String> parts = new ArrayList<>();
        parts.add(Formats.significant(tank.volumeL(), 3) + " L");
        parts.add(tank.chlorideMgPerL().isPresent()
                ? "chloride " + Formats.significant(tank.chlorideMgPerL().getAsDouble(), 2) + " mg/L"
                : "chloride unknown, taken as "
                        + Formats.significant(Limits.CHLORIDE_WHERE_UNKNOWN_MG_PER_L, 2) + " mg/L");
        if (tank.alkalinityMgPerL().isPresent()) {
            parts.add("alkalinity " + Formats.significant(tank.alkalinityMgPerL().getAsDouble(), 2)
                    + " mg/L as CaCO₃");
        }
        tank.disinfectant().filter(kind -> !"none".equals(kind))
                .ifPresent(kind -> parts.add("tap water with " + kind.toLowerCase(Locale.ENGLISH)));
        return String.join(", ", parts);
    }
}
