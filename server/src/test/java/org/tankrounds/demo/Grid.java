package org.tankrounds.demo;

import java.time.*;
import java.util.*;
import org.tankrounds.tankmodel.TankState;
import org.tankrounds.water.*;

class Grid {
    static DemoTank with(DemoTank t, Story s) { return new DemoTank(t.key(), t.classroom(), t.teacher(), t.equipment(), t.water(), t.eggs(), t.routine(), s); }
    static void show(String label, DemoTank t) {
        int[] ks = {20, 14, 10, 7, 5, 3, 2, 1, 0};
        StringBuilder b = new StringBuilder(label);
        for (int k : ks) {
            double loN = 99, hiN = 0, loA = 99, hiA = 0, loU = 99, hiU = 0, loP = 99, hiP = 0, loK = 999, hiK = -1;
            for (int d = 0; d < 7; d++) {
                Instant now = Instant.parse("2026-11-23T15:45:00Z").plus(Duration.ofDays(d));
                DemoSimulator sim = new DemoSimulator(t, 100, DemoKit.KIT, ZoneId.of("UTC"), now, 1);
                Instant at = now.minus(Duration.ofDays(k));
                TankState w = sim.truthAt(at); double ph = sim.truePhAt(at);
                double u = Ammonia.unIonisedMgPerL(w.ammoniaMgPerL(), ph, w.temperatureC())/.0125;
                loN = Math.min(loN, w.nitriteMgPerL()); hiN = Math.max(hiN, w.nitriteMgPerL());
                loA = Math.min(loA, w.ammoniaMgPerL()); hiA = Math.max(hiA, w.ammoniaMgPerL());
                loU = Math.min(loU, u); hiU = Math.max(hiU, u); loP = Math.min(loP, ph); hiP = Math.max(hiP, ph);
                loK = Math.min(loK, w.alkalinityMgPerL()); hiK = Math.max(hiK, w.alkalinityMgPerL());
            }
            b.append(String.format(" |%d A%.2f-%.2f N%.2f-%.2f u%.2f-%.2f p%.1f-%.1f k%.0f-%.0f", k, loA, hiA, loN, hiN, loU, hiU, loP, hiP, loK, hiK));
        }
        System.out.println(b);
    }
    public static void main(String[] a) {
        List<DemoTank> all = new ArrayList<>();
        DemoScenario.chapters().forEach(c -> all.addAll(c.tanks()));
        if (a.length == 0) { for (DemoTank t : all) show(t.key() + "\n   ", t); return; }
        DemoTank t = all.stream().filter(x -> x.key().equals(a[0])).findFirst().orElseThrow();
        for (String xa : a[1].split(",")) for (String xn : a[2].split(",")) {
            Story s = new Story(Double.parseDouble(xa), Double.parseDouble(xn), t.story().feeding(), t.story().chillerStopped(), t.story().changesStopped(), t.story().silent(), List.of(), List.of(), OptionalInt.empty());
            show(xa + " " + xn, with(t, s));
        }
    }
}
