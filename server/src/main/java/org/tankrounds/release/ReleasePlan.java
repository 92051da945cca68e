package org.tankrounds.release;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tankrounds.transport.Ice;
import org.tankrounds.water.OxygenSaturation;

/**
 * When fish of which tanks go to an approved site, and how.
 *
 * @param droppedAt empty while it stands
 */
public record ReleasePlan(int planId, int seasonId, int approvalId, Details details, Optional<Instant> droppedAt) {

    /** Foam box of a usual wall, mm (common practice, no source). */
    private static final double FOAM_MM = 25;
    private static final double CUBE_SIDES = 6;
    private static final double LITRES_PER_M3 = 1000;
    /** Fish on an empty gut foul the water of the box less, h before the trip (common practice, no source). */
    static final int FASTING_FROM_H = 48;
    static final int FASTING_UNTIL_H = 24;

    /**
     * @param startsAt when they are to be at the water
     * @param roadHours from the tank to the water, h
     * @param tankC water of the tanks and of the boxes, °C
     * @param streamC as expected, °C
     * @param outsideC air around the boxes on the way, °C
     * @param oxygenMgPerL in the boxes at the start; empty takes what the water holds
     * @param hasAir whether every box has air from a battery
     * @param duties who does what, as a duty; missing for nobody yet
     * @param loads by tank, in the order of the tanks
     */
    public record Details(Instant startsAt, double roadHours, OptionalDouble tankC, OptionalDouble streamC,
            OptionalDouble outsideC, OptionalDouble oxygenMgPerL, boolean hasAir, int children, int adults,
            Map<Duty, String> duties, Optional<String> note, List<Load> loads) {

        public int fish() {
            return loads.stream().mapToInt(Load::fish).sum();
        }

        public int boxes() {
            return loads.stream().mapToInt(Load::boxes).sum();
        }

        /**
         * Oxygen in the boxes when they are shut, mg/L; empty where neither it nor a temperature is known.
         *
         * @param elevationM of the tank that they are filled from: where they are shut
         */
        public OptionalDouble startOxygenMgPerL(double elevationM) {
            return oxygenMgPerL.isPresent() || tankC.isEmpty() ? oxygenMgPerL
                    : OptionalDouble.of(OxygenSaturation.mgPerL(tankC.getAsDouble(), elevationM));
        }

        /** Ice that holds the boxes at the tanks' temperature on the way, kg; empty where a temperature is missing. */
        public OptionalDouble iceKg() {
            if (tankC.isEmpty() || outsideC.isEmpty()) {
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(loads.stream().mapToDouble(load -> load.boxes() * Ice.toHoldKg(
                    Ice.foamBoxLossWPerK(surfaceM2(load.boxL()), FOAM_MM), outsideC.getAsDouble(), tankC.getAsDouble(),
                    roadHours)).sum());
        }

        /** As if the box were a cube. */
        private static double surfaceM2(double litres) {
            double edgeM = Math.cbrt(litres / LITRES_PER_M3);
            return CUBE_SIDES * edgeM * edgeM;
        }
    }

    public String address() {
        return "/release/plans/" + planId;
    }
}
