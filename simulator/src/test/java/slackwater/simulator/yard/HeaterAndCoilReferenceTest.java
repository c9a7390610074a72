package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slackwater.model.engineering.Coil;

/**
 * Goal: the block and the coil agree with integrators that know none of our formulas. Method: values that SciPy made once
 * (heater-and-coil.py beside the data), and Hipparchus' Dormand-Prince at 1e-9 with right-hand sides written here.
 */
final class HeaterAndCoilReferenceTest {
    private static final long S = RigWords.S;
    private static final double ONE_PERCENT = 0.01;
    private static final double FLOW_KG_PER_S = 40e-3 / 60;
    private static final double WATER_J_PER_KG = 4190 * 80.0 + 2257e3;
    private static final double GLYCOL_J_PER_KG = (189.9 * 166.85 + 67e3) / 0.076095;
    private static final double TAKEN_W = FLOW_KG_PER_S * (0.8 * WATER_J_PER_KG + 0.2 * GLYCOL_J_PER_KG);

    /** The coil of handbook 3.5: a 12 V relay with its armature closed. */
    private static final Coil RELAY = new Coil(2.29, 275, 12);

    private static final Map<String, DoubleSupplier> COMPUTED = new LinkedHashMap<>();

    static {
        COMPUTED.put("warm-up", () -> secondsUntilReady(cold()));
        COMPUTED.put("after-100", () -> coldAfter(100));
        COMPUTED.put("off-time", () -> secondsUntilDrawing(YardHeatTest.hot(0), true));
        COMPUTED.put("on-time", HeaterAndCoilReferenceTest::onTimeS);
        COMPUTED.put("burst-not-ready", HeaterAndCoilReferenceTest::burstS);
        COMPUTED.put("burst-after-20", HeaterAndCoilReferenceTest::burstAfter20C);
        COMPUTED.put("coil-diode-15", () -> RELAY.decayS(Coil.DIODE_V, 0.15));
        COMPUTED.put("coil-zener-15", () -> RELAY.decayS(Coil.zenerClampV(24), 0.15));
        COMPUTED.put("coil-zener-0", () -> RELAY.decayS(Coil.zenerClampV(24), 0));
    }

    static Stream<String> rows() {
        return COMPUTED.keySet().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void theYardAgreesWithSciPyWithinOnePercent(final String row) throws IOException {
        final double expected = Objects.requireNonNull(reference().get(row), row);
        // A yard answers on its grid of 10 ms, which is within one percent of all times here.
        assertThat(Objects.requireNonNull(COMPUTED.get(row), row).getAsDouble())
                .isCloseTo(expected, within(ONE_PERCENT * expected));
    }

    @Test
    void everyReferenceValueIsAskedFor() throws IOException {
        assertThat(reference().keySet()).containsExactlyElementsOf(COMPUTED.keySet());
    }

    @Test
    void aWholeCycleOfWarmUpThermostatAndBurstsFollowsHipparchusWithinOnePercent() {
        final Yard yard = YardHeatTest.fogMaker(600.0 / 897, 230.36, FLOW_KG_PER_S);
        yard.setOutputHigh(0, true);
        yard.step(0);
        double temperatureC = 20;
        boolean isCalling = true;
        double worst = 0;
        for (long step = 1; step <= 60_000; step++) {
            final boolean isPumping = step > 30_000 && step % 4_000 < 1_000;
            yard.setOutputHigh(1, isPumping);
            yard.step(step * 10_000_000L);
            // The hand is felt at the yard's next grid point, so the block took the power of the step before.
            temperatureC = block(temperatureC, (isCalling ? 700 : 0) - (wasPumping(step) ? TAKEN_W : 0), 0.01);
            isCalling = temperatureC < 250 && (isCalling || temperatureC <= 240);
            worst = Math.max(worst, Math.abs(yard.blockC(0) / temperatureC - 1));
        }
        assertThat(worst).isLessThan(ONE_PERCENT);
    }

    @Test
    void theFlybackDecaysAsHipparchusSaysWithinOnePercent() {
        for (final double clampV : new double[] {0, Coil.DIODE_V, Coil.zenerClampV(24)}) {
            for (final double atS : new double[] {0.5e-3, 1e-3, 2e-3, 3e-3}) {
                final double expectedA = Math.max(0, integrated(12.0 / 275, atS, (t, y) ->
                        new double[] {(-275 * y[0] - clampV) / 2.29}));
                assertThat(RELAY.decayA(clampV, atS)).isCloseTo(expectedA, within(ONE_PERCENT * expectedA + 1e-12));
            }
        }
    }

    private static boolean wasPumping(final long step) {
        return step - 1 > 30_000 && (step - 1) % 4_000 < 1_000;
    }

    private static Yard cold() {
        final Yard yard = YardHeatTest.fogMaker(600.0 / 897, 230.36, 0);
        yard.setOutputHigh(0, true);
        return yard;
    }

    private static double coldAfter(final int seconds) {
        final Yard yard = cold();
        yard.step(seconds * S);
        return yard.blockC(0);
    }

    private static double secondsUntilReady(final Yard yard) {
        final double fromS = yard.nowNs() / 1e9;
        return YardHeatTest.firstS(yard, () -> yard.isActive(0), 600) - fromS;
    }

    private static double secondsUntilDrawing(final Yard yard, final boolean isDrawing) {
        final double fromS = yard.nowNs() / 1e9;
        return YardHeatTest.firstS(yard, () -> (yard.currentA("shed") > 0) == isDrawing, 600) - fromS;
    }

    private static double onTimeS() {
        final Yard yard = YardHeatTest.hot(0);
        secondsUntilDrawing(yard, true);
        return secondsUntilDrawing(yard, false);
    }

    /** From 250 degC with the heater on: the thermostat is brought to call again by a burst down to 240. */
    private static Yard burst() {
        final Yard yard = cold();
        YardHeatTest.firstS(yard, () -> yard.blockC(0) >= 249.9, 600);
        final Yard pumping = YardHeatTest.fogMaker(600.0 / 897, 230.36, FLOW_KG_PER_S);
        pumping.setOutputHigh(0, true);
        pumping.step(yard.nowNs());
        pumping.setOutputHigh(1, true);
        return pumping;
    }

    private static double burstS() {
        final Yard yard = burst();
        final double fromS = yard.nowNs() / 1e9;
        // It was not ready yet, so its temperature tells, and not its signal.
        return YardHeatTest.firstS(yard, () -> yard.blockC(0) <= 210, 600) - fromS;
    }

    private static double burstAfter20C() {
        final Yard yard = burst();
        yard.step(yard.nowNs() + 20 * S);
        return yard.blockC(0);
    }

    private static double block(final double fromC, final double powerW, final double forS) {
        return integrated(fromC, forS, (t, y) -> new double[] {(powerW - (y[0] - 20) / 1.2) / 600});
    }

    private interface Slope {
        double[] at(double timeS, double[] values);
    }

    private static double integrated(final double from, final double forS, final Slope slope) {
        final OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 1;
            }

            @Override
            public double[] computeDerivatives(final double timeS, final double[] values) {
                return slope.at(timeS, values);
            }
        };
        return new DormandPrince853Integrator(1e-9, forS, 1e-9, 1e-9)
                .integrate(equation, new ODEState(0, new double[] {from}), forS)
                .getPrimaryState()[0];
    }

    private static Map<String, Double> reference() throws IOException {
        final Map<String, Double> values = new LinkedHashMap<>();
        try (InputStream data =
                HeaterAndCoilReferenceTest.class.getResourceAsStream("/reference/heater-and-coil.tsv")) {
            final String text = new String(data.readAllBytes(), StandardCharsets.UTF_8);
            text.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
                final String[] cells = line.split("\t", -1);
                values.put(cells[0], Double.parseDouble(cells[1]));
            });
        }
        return values;
    }
}
