package org.tankrounds.demo;

import java.time.*;
import java.util.*;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.water.*;

class Tune {
    public static void main(String[] a) {
        int n = Integer.parseInt(a[0]);
        for (int d = 0; d < n; d++) {
            Instant now = Instant.parse("2026-11-23T08:45:00Z").plus(Duration.ofDays(d));
            System.out.println("==== " + now.atZone(ZoneOffset.UTC).getDayOfWeek());
            for (DemoChapter c : DemoScenario.chapters()) for (DemoSchool s : c.schools()) for (DemoTank t : s.tanks()) {
                DemoSimulator sim = new DemoSimulator(t, s.elevationM(), DemoKit.KIT, ZoneId.of("UTC"), now, 1);
                StringBuilder b = new StringBuilder(String.format("%-20s", t.key()));
                for (int k : new int[] {30, 20, 14, 10, 7, 5, 3, 2, 1, 0}) {
                    Instant at = now.minus(Duration.ofDays(k));
                    TankState w = sim.truthAt(at);
                    double ph = sim.truePhAt(at);
                    b.append(String.format(" |%d: T%.1f A%.2f N%.2f pH%.2f al%.0f u%.2f", k, w.temperatureC(), w.ammoniaMgPerL(), w.nitriteMgPerL(), ph, w.alkalinityMgPerL(), Ammonia.unIonisedMgPerL(w.ammoniaMgPerL(), ph, w.temperatureC())/.0125));
                }
                System.out.println(b);
                if (n == 1) {
                    System.out.println("   feeding " + sim.firstFeedingOn());
                    List<DemoReading> r = sim.readings();
                    int deaths = 0; double feed = 0;
                    for (DemoReading x : r) for (DemoReading.Value v : x.values()) { if (v.analyte() == Analyte.DEATHS) deaths += v.value().intValue(); }
                    System.out.println("   readings " + r.size() + " deaths " + deaths);
                    for (DemoReading x : r.subList(Math.max(0, r.size() - 8), r.size())) {
                        StringBuilder y = new StringBuilder("      " + x.measuredAt().atZone(ZoneOffset.UTC).toLocalDateTime() + " " + x.by());
                        for (DemoReading.Value v : x.values()) y.append(" ").append(v.analyte().code()).append("=").append(v.value().toPlainString()).append(v.form().spelling());
                        System.out.println(y + " " + x.note());
                    }
                }
            }
        }
    }
}
