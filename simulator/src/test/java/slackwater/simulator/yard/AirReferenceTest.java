package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.AbstractODEDetector;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.engineering.Cylinder;
import slackwater.model.engineering.FlowPath;

/**
 * Cylinder and tank against integrators of others' making: Hipparchus' Dormand-Prince at 1e-9, with a right-hand side written
 * here from the handbook (1.3, 1.6, 1.9), and values that SciPy gave once (reference/air.tsv, made by air.py).
 */
class AirReferenceTest {
    private static final double ATM = 101_325;
    private static final double ANR = 100_000;
    private static final double STEP_S = 0.00025;
    private static final double B = 0.3;
    private static final double PART = 0.01;

    /** What is tried: the same figures stand in air.py. */
    private record Stroke(
            String name,
            double boreM,
            double travelM,
            double massKg,
            double backN,
            double frictionN,
            double deadM3,
            double conductance,
            double linePa) {
        CylinderForm form() {
            return new CylinderForm(
                    new Cylinder(boreM, 0, travelM),
                    new CylinderForm.Moving(massKg, backN, frictionN),
                    new CylinderForm.Air(conductance, conductance, conductance, B, deadM3, linePa),
                    false,
                    false);
        }

        double volumeM3(final double atM) {
            return deadM3 + Math.PI / 4 * boreM * boreM * atM;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private record End(double seconds, double speedMPerS) {}

    private static Stream<Stroke> strokes() {
        return Stream.of(
                new Stroke("32mm-4bar", 0.032, 0.30, 3.0, 3.0 * 9.80665, 15, 2.0e-5, 1.0e-8, 501_325),
                new Stroke("25mm-2.5bar", 0.025, 0.25, 2.5, 2.5 * 9.80665, 12, 1.0e-5, 0.3e-8, 351_325),
                new Stroke("25mm-slow", 0.025, 0.25, 2.5, 2.5 * 9.80665, 12, 1.0e-5, 0.05e-8, 351_325));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("strokes")
    void aStrokeOutEndsWhenAndAsFastAsDormandPrinceAndSciPySay(final Stroke stroke) throws IOException {
        final End plant = plant(stroke, true);
        agree(plant, dormandPrince(stroke, true));
        agree(plant, sciPy(stroke, "out"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("strokes")
    void aReturnEndsWhenAndAsFastAsDormandPrinceAndSciPySay(final Stroke stroke) throws IOException {
        final End plant = plant(stroke, false);
        agree(plant, dormandPrince(stroke, false));
        agree(plant, sciPy(stroke, "back"));
    }

    /** Handbook 1.6 cases 2 and 5 are the same tank: 16.636 s and 52.025 s. */
    @ParameterizedTest(name = "24 l from 8 bar to {0} Pa")
    @ValueSource(doubles = {400_000, 110_000})
    void aTankThatBlowsDownStepByStepTakesAsLongAsSciPySays(final double toPaAbs) throws IOException {
        final double stepS = 0.001;
        double pa = 800_000;
        double seconds = 0;
        while (pa > toPaAbs) {
            pa -= AirSection.flow(1e-8, pa, ATM) * stepS * ANR / 0.024;
            seconds += stepS;
        }
        final String name = toPaAbs > 200_000 ? "24l-8-to-4" : "24l-8-to-1.1";
        final double expected = value(name, "seconds");
        assertThat(seconds).isCloseTo(expected, within(PART * expected));
    }

    private static void agree(final End plant, final End reference) {
        assertThat(plant.seconds()).isCloseTo(reference.seconds(), within(PART * reference.seconds()));
        // the energy at the end goes with the square of the speed
        assertThat(plant.speedMPerS() * plant.speedMPerS())
                .isCloseTo(
                        reference.speedMPerS() * reference.speedMPerS(),
                        within(PART * reference.speedMPerS() * reference.speedMPerS()));
    }

    private static End plant(final Stroke stroke, final boolean isOut) {
        final CylinderForm form = stroke.form();
        final double[] numbers = new double[CylinderForm.NUMBERS];
        form.begin(numbers, 0);
        if (!isOut) {
            numbers[CylinderForm.AT_M] = stroke.travelM();
            numbers[CylinderForm.CAP_M3] = stroke.linePa() * stroke.volumeM3(stroke.travelM()) / ANR;
        }
        double seconds = 0;
        double speed = 0;
        while (isOut ? numbers[CylinderForm.AT_M] < stroke.travelM() : numbers[CylinderForm.AT_M] > 0) {
            speed = Math.abs(numbers[CylinderForm.SPEED]);
            form.advance(numbers, 0, isOut, stroke.linePa(), STEP_S);
            seconds += STEP_S;
        }
        return new End(seconds, speed);
    }

    private static End dormandPrince(final Stroke stroke, final boolean isOut) {
        final double area = Math.PI / 4 * stroke.boreM() * stroke.boreM();
        final OrdinaryDifferentialEquation law = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 3;
            }

            @Override
            public double[] computeDerivatives(final double t, final double[] y) {
                final double pa = y[2] * ANR / stroke.volumeM3(y[0]);
                final double force = (pa - ATM) * area - stroke.backN();
                final double way = y[1] != 0 ? Math.signum(y[1]) : Math.signum(force);
                double net = force - way * stroke.frictionN();
                final boolean isHeld =
                        y[1] == 0 && (Math.abs(force) <= stroke.frictionN() || (isOut ? net < 0 : net > 0));
                net = isHeld ? 0 : net;
                final FlowPath path = new FlowPath(stroke.conductance(), B);
                return new double[] {
                    y[1], net / stroke.massKg(), path.freeFlowM3PerS(isOut ? stroke.linePa() : ATM, pa, 293.15)
                };
            }
        };
        final DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1e-4, 1e-12, 1e-9);
        integrator.addEventDetector(new Stop(stroke, isOut));
        final double from = isOut ? 0 : stroke.travelM();
        final double pressure = isOut ? ATM : stroke.linePa();
        final ODEStateAndDerivative end = integrator.integrate(
                law, new ODEState(0, new double[] {from, 0, pressure * stroke.volumeM3(from) / ANR}), 20);
        return new End(end.getTime(), Math.abs(end.getPrimaryState()[1]));
    }

    /** Ends the integration at the end of the travel. */
    private static final class Stop extends AbstractODEDetector<Stop> {
        private final Stroke stroke;
        private final boolean isOut;

        Stop(final Stroke stroke, final boolean isOut) {
            this(
                    (state, isForward) -> 0.001,
                    100,
                    new BracketingNthOrderBrentSolver(0, 1e-9, 0, 5),
                    (state, detector, isIncreasing) -> Action.STOP,
                    stroke,
                    isOut);
        }

        private Stop(
                final AdaptableInterval interval,
                final int most,
                final BracketedUnivariateSolver<UnivariateFunction> solver,
                final ODEEventHandler handler,
                final Stroke stroke,
                final boolean isOut) {
            super(interval, most, solver, handler);
            this.stroke = stroke;
            this.isOut = isOut;
        }

        @Override
        public double g(final ODEStateAndDerivative state) {
            final double at = state.getPrimaryState()[0];
            return isOut ? at - stroke.travelM() : at + 1e-12;
        }

        @Override
        protected Stop create(
                final AdaptableInterval interval,
                final int most,
                final BracketedUnivariateSolver<UnivariateFunction> solver,
                final ODEEventHandler handler) {
            return new Stop(interval, most, solver, handler, stroke, isOut);
        }
    }

    private static End sciPy(final Stroke stroke, final String way) throws IOException {
        return new End(value(stroke.name(), way + "-seconds"), value(stroke.name(), way + "-speed"));
    }

    private static double value(final String name, final String quantity) throws IOException {
        final List<String> lines = Files.readAllLines(Path.of("src", "test", "resources", "reference", "air.tsv"));
        return lines.stream()
                .map(line -> line.split("\t", -1))
                .filter(cells -> cells.length == 3 && cells[0].equals(name) && cells[1].equals(quantity))
                .mapToDouble(cells -> Double.parseDouble(cells[2]))
                .findFirst()
                .orElseThrow(() -> new AssertionError(name + " " + quantity + " is not in air.tsv"));
    }
}
