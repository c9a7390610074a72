package slackwater.model.engineering;

import java.util.Arrays;
import java.util.Optional;

/** Resistance of wires as the codes print it, where a rule wants the printed figure (handbook 3.3). */
public final class WireTable {
    private static final double M_PER_1000_FT = 304.8;

    private WireTable() {}

    /** NEC chapter 9 table 8: uncoated copper at 75 degC, by American wire gauge. */
    public enum Nec {
        AWG_18(18, 7.77, 7.95),
        AWG_16(16, 4.89, 4.99),
        AWG_14(14, 3.07, 3.14),
        AWG_12(12, 1.93, 1.98),
        AWG_10(10, 1.21, 1.24);

        private final int gauge;
        private final double solidOhmPer1000Ft;
        private final double strandedOhmPer1000Ft;

        Nec(final int gauge, final double solidOhmPer1000Ft, final double strandedOhmPer1000Ft) {
            this.gauge = gauge;
            this.solidOhmPer1000Ft = solidOhmPer1000Ft;
            this.strandedOhmPer1000Ft = strandedOhmPer1000Ft;
        }

        /** Empty for a gauge that stands not in this part of the table. */
        public static Optional<Nec> ofGauge(final int gauge) {
            return Arrays.stream(values()).filter(wire -> wire.gauge == gauge).findFirst();
        }

        public int gauge() {
            return gauge;
        }

        /** As printed, ohm/1000 ft. */
        public double solidOhmPer1000Ft() {
            return solidOhmPer1000Ft;
        }

        /** Seven strands; as printed, ohm/1000 ft. */
        public double strandedOhmPer1000Ft() {
            return strandedOhmPer1000Ft;
        }

        public double solidOhmPerM() {
            return solidOhmPer1000Ft / M_PER_1000_FT;
        }

        public double strandedOhmPerM() {
            return strandedOhmPer1000Ft / M_PER_1000_FT;
        }
    }

    /** IEC 60228: most resistance of plain copper at 20 degC, by cross-section (from memory). */
    public enum Iec {
        MM2_0_5(0.5, 36, 39),
        MM2_0_75(0.75, 24.5, 26),
        MM2_1(1, 18.1, 19.5),
        MM2_1_5(1.5, 12.1, 13.3),
        MM2_2_5(2.5, 7.41, 7.98);

        private static final double M_PER_KM = 1_000;
        private static final double M2_PER_MM2 = 1e-6;

        private final double areaMm2;
        private final double solidOhmPerKm;
        private final double flexibleOhmPerKm;

        Iec(final double areaMm2, final double solidOhmPerKm, final double flexibleOhmPerKm) {
            this.areaMm2 = areaMm2;
            this.solidOhmPerKm = solidOhmPerKm;
            this.flexibleOhmPerKm = flexibleOhmPerKm;
        }

        /** Empty for a cross-section that stands not in this part of the table. */
        public static Optional<Iec> ofArea(final double areaM2) {
            return Arrays.stream(values())
                    .filter(wire -> Math.abs(wire.areaM2() - areaM2) <= wire.areaM2() * 1e-6)
                    .findFirst();
        }

        public double areaM2() {
            return areaMm2 * M2_PER_MM2;
        }

        /** Class 1; as printed, ohm/km. */
        public double solidOhmPerKm() {
            return solidOhmPerKm;
        }

        /** Class 5; as printed, ohm/km. */
        public double flexibleOhmPerKm() {
            return flexibleOhmPerKm;
        }

        public double solidOhmPerM() {
            return solidOhmPerKm / M_PER_KM;
        }

        public double flexibleOhmPerM() {
            return flexibleOhmPerKm / M_PER_KM;
        }
    }
}
