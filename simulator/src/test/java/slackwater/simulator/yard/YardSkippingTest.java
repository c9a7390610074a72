package slackwater.simulator.yard;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slackwater.model.Air;
import slackwater.model.Circuit;
import slackwater.model.Feed;
import slackwater.model.Field;
import slackwater.model.Load;
import slackwater.model.Point;
import slackwater.model.Ray;
import slackwater.model.Return;
import slackwater.model.Rig;
import slackwater.model.Supply;
import slackwater.model.Weather;
import slackwater.model.kind.Family;
import slackwater.model.kind.InputFamily;
import slackwater.simulator.visitor.Crowd;
import slackwater.simulator.visitor.Visitor;
import slackwater.simulator.yard.RigWords.Part;

/**
 * Goal: a yard that sleeps is bit for bit the yard that was stepped all the time, and a copy is bit for bit its original.
 * Method: two controllers with every kind, people, and a drawn hand that now and then touches anything that can be touched.
 */
final class YardSkippingTest {
    private static final long S = RigWords.S;
    private static final long MS = RigWords.MS;
    private static final int TOUCHES = 150;
    private static final List<OutputOverlay> FAULTS =
            List.of(OutputOverlay.WELDED, OutputOverlay.FED_ELSEWHERE, OutputOverlay.DEAD);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void sleepingLeavesEveryBitAsSteppingDoes(final long seed) {
        final Rig rig = rig();
        final Yard skipping = new Yard(rig, crowd(seed), seed);
        final Yard stepping = skipping.copy();
        final SplittableRandom random = new SplittableRandom(seed);
        long atNs = 0;
        for (int i = 0; i < TOUCHES; i++) {
            atNs += gapNs(random);
            skipping.step(atNs);
            stepping.stepEveryGridPoint(atNs);
            assertThat(skipping.isSameAs(stepping))
                    .as("after touch %d at %d ns", i, atNs)
                    .isTrue();
            final long touch = random.nextLong();
            touch(skipping, rig, touch);
            touch(stepping, rig, touch);
        }
        assertThat(skipping.fingerprint()).isEqualTo(stepping.fingerprint());
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void nothingThatCanBeAskedChangesBeforeTheMomentItWakes(final long seed) {
        final Rig rig = rig();
        final Yard yard = new Yard(rig, crowd(seed), seed);
        final SplittableRandom random = new SplittableRandom(seed);
        long atNs = 0;
        for (int i = 0; i < TOUCHES; i++) {
            atNs += gapNs(random);
            yard.step(atNs);
            touch(yard, rig, random.nextLong());
            final Yard ahead = yard.copy();
            final List<Object> before = answers(ahead, rig);
            final long untilNs = Math.min(yard.wakeNs() - 10 * MS, atNs + 5 * S);
            ahead.stepEveryGridPoint(untilNs);
            assertThat(answers(ahead, rig)).as("touch %d at %d ns", i, atNs).isEqualTo(before);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void aCopyThatIsSteppedIsWhatTheOriginalBecomesAndDoesNotDisturbIt(final long seed) {
        final Rig rig = rig();
        final Yard yard = new Yard(rig, crowd(seed), seed);
        final SplittableRandom random = new SplittableRandom(seed);
        long atNs = 0;
        for (int i = 0; i < TOUCHES; i++) {
            atNs += gapNs(random);
            final long touch = random.nextLong();
            final long before = yard.fingerprint();
            final Yard copy = yard.copy();
            copy.step(atNs);
            touch(copy, rig, touch);
            assertThat(yard.fingerprint()).isEqualTo(before);

            yard.step(atNs);
            touch(yard, rig, touch);
            assertThat(copy.isSameAs(yard)).as("after touch %d", i).isTrue();
            assertThat(copy.fingerprint()).isEqualTo(yard.fingerprint());
        }
    }

    /** Mostly short, at times minutes: strokes overlap, and blocks warm up and trays run low as well. */
    private static long gapNs(final SplittableRandom random) {
        return switch (random.nextInt(4)) {
            case 0 -> random.nextInt(1, 40) * MS;
            case 1 -> random.nextInt(1, 100) * (10 * MS);
            case 2 -> random.nextInt(1, 20) * S;
            default -> random.nextInt(1, 120) * S;
        };
    }

    private static void touch(final Yard yard, final Rig rig, final long touch) {
        final SplittableRandom random = new SplittableRandom(touch);
        final int output = random.nextInt(rig.outputs().size());
        final int input = random.nextInt(rig.inputs().size());
        switch (random.nextInt(15)) {
            case 0 -> yard.setHoldUp(0, random.nextInt(4) != 0);
            case 1 -> yard.pressStopLoop(random.nextInt(4) == 0);
            case 2 -> yard.overlayInput(input, overlay(random.nextInt(6)));
            case 3 ->
                yard.overlayOutput(
                        output, random.nextInt(3) == 0 ? Optional.of(FAULTS.get(random.nextInt(3))) : Optional.empty());
            case 4 -> yard.hold(input, random.nextBoolean());
            case 5 -> yard.leaveAlone(input);
            case 6 -> {
                yard.refill(index(rig, "mist"));
                yard.refill(index(rig, "pump"));
            }
            case 12, 13 -> yard.resetBreaker(random.nextBoolean() ? "shed" : "house");
            case 14 -> yard.leakToGround("shed", random.nextInt(2) * 0.007);
            case 7 -> {
                yard.setOutputHigh(output, true);
                yard.setOutputHigh(output, false);
            }
            default -> yard.setOutputHigh(output, random.nextInt(3) != 0);
        }
    }

    private static Optional<InputOverlay> overlay(final int which) {
        return switch (which) {
            case 0 -> Optional.of(new InputOverlay.StuckHigh());
            case 1 -> Optional.of(new InputOverlay.Open());
            case 2 -> Optional.of(new InputOverlay.Chatter(70 * MS));
            default -> Optional.empty();
        };
    }

    private static int index(final Rig rig, final String output) {
        return rig.outputs().indexOf(rig.output(output).orElseThrow());
    }

    private static List<Object> answers(final Yard yard, final Rig rig) {
        final List<Object> answers = new ArrayList<>();
        for (int i = 0; i < rig.outputs().size(); i++) {
            answers.add(yard.isPowered(i));
            answers.add(yard.isMoving(i));
            answers.add(yard.energyJ(i));
            answers.add(yard.peopleInReach(i));
            answers.add(yard.isHotEnough(i));
            answers.add(yard.hasWater(i));
            answers.add(yard.hasFluid(i));
        }
        for (int i = 0; i < rig.inputs().size(); i++) {
            answers.add(yard.isInputHigh(i, 0));
        }
        answers.add(yard.pressurePa());
        answers.add(yard.present());
        answers.add(List.of(yard.isTripped("shed"), yard.isTripped("house")));
        answers.add(List.of(yard.currentA("shed"), yard.currentA("house"), yard.currentA("twelve")));
        return answers;
    }

    private static Crowd crowd(final long seed) {
        final SplittableRandom random = new SplittableRandom(~seed);
        final List<Visitor> visitors = new ArrayList<>();
        long arrivesNs = 0;
        for (int i = 0; i < 150; i++) {
            arrivesNs += random.nextLong(80 * S);
            visitors.add(
                    random.nextInt(4) == 0
                            ? RigWords.stander(arrivesNs, arrivesNs + 1 + random.nextLong(60 * S), 8)
                            : RigWords.walker(arrivesNs, 0, 28, 0.6 + random.nextInt(12) / 10.0));
        }
        return Crowd.of(visitors);
    }

    /** Loads so heavy that supplies fold and breakers trip now and then. */
    private static Rig rig() {
        final Feed.SwitchedBy relay = new Feed.SwitchedBy(
                Feed.Device.RELAY, 10, 0, Duration.ofMillis(8), Duration.ofMillis(34), Duration.ofMillis(3));
        final Load compressor = new Load(5, 20, Duration.ofMillis(300), fedBy("house", Optional.empty()));
        final Air.Plate plate = new Air.Plate(
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), compressor);
        final RigWords words = new RigWords()
                .air(new Air(0.02, 250_000, 300_000, 0.005 / 60, 250_000, plate))
                .weather(new Weather(10, 0.8, 1.2, 90))
                .circuit(new Circuit("shed", 230, 3, OptionalDouble.of(0.006), 0.1))
                .circuit(new Circuit("house", 230, 6, OptionalDouble.empty(), 0))
                .supply(new Supply("twelve", 12, 4.2, Optional.of("shed"), OptionalDouble.empty()))
                .drawing(new Load(0.5, 1, Duration.ofMillis(45), fedBy("twelve", Optional.of(relay))));
        bank(words.controller("north", true), "");
        words.drawing(new Load(1.2, 4, Duration.ofSeconds(2), fedBy("house", Optional.empty())));
        bank(words.controller("south", false), "south-");
        final Part mist = Part.of(Family.MISTER, "mist").standing(new Point(7, 2), 0);
        return words.output(mist, Fact.USES, 2e-6, Fact.HOLDS, 1e-3)
                .output(Family.FAN, "fan")
                .input(InputFamily.LEVEL, "water", Fact.OF, "mist")
                .input(InputFamily.RAIN, "rain")
                .input(InputFamily.STOP_LOOP, "loop")
                .rig();
    }

    private static Feed fedBy(final String source, final Optional<Feed.SwitchedBy> through) {
        return new Feed(Optional.of(source), Optional.empty(), through, Optional.empty());
    }

    private static void bank(final RigWords words, final String prefix) {
        final Point at = new Point(8, 0.5);
        words.output(Family.AIR_SUPPLY, prefix + "air")
                .output(
                        Part.of(Family.VALVE, prefix + "lid")
                                .returns(Return.SPRING_RETURNS, Return.FALLS)
                                .standing(at, 0.7),
                        Fact.TRAVEL,
                        0.25,
                        Fact.MOVING_MASS,
                        2.5,
                        Fact.AIR_PER_STROKE,
                        0.45e-3)
                .output(
                        Part.of(Family.VALVE, prefix + "arm").returns(Return.AIR_DRIVES, Return.STAYS),
                        Fact.TRAVEL,
                        0.4,
                        Fact.AIR_PER_STROKE,
                        0.5e-3,
                        Fact.RETURNS_IN,
                        Duration.ofMillis(1300))
                .output(Family.VALVE, prefix + "jet", Fact.AIR_PER_STROKE, 1.5e-3)
                .output(Family.HEATER, prefix + "heater", Fact.WARMS_IN, Duration.ofMinutes(3))
                .output(
                        Part.of(Family.PUMP, prefix + "pump").standing(at, 0),
                        Fact.HEATED_BY,
                        prefix + "heater",
                        Fact.FLOW,
                        1e-3,
                        Fact.HOLDS,
                        0.1e-3)
                .output(Family.STROBE, prefix + "flash", Fact.FLASH_RATE, 2.7)
                .output(Family.RELEASE, prefix + "gull", Fact.TRAVEL, 1.2, Fact.MOVING_MASS, 0.4)
                .output(Family.CONTACT, prefix + "crab", Fact.RUN_TIME, Duration.ofMillis(6005))
                .motion(prefix + "path", new Field(new Point(5, 2), 270, 60, 4))
                .motion(
                        prefix + "lane",
                        new Field(new Point(12, 2), 270, 60, 4),
                        Fact.PULSE,
                        Duration.ofMillis(3333),
                        Fact.BLOCK,
                        Duration.ofMillis(2500),
                        Fact.ONE_PULSE,
                        true,
                        Fact.FALSE_AN_HOUR,
                        20L)
                .beam(
                        prefix + "low",
                        new Ray(new Point(7, -1), new Point(7, 1), 0.4),
                        Fact.RESPONDS_IN,
                        Duration.ofMillis(25))
                .input(InputFamily.PRESSURE, prefix + "air-ok", Fact.SET_POINT, 180_000.0)
                .input(InputFamily.READY, prefix + "ready", Fact.OF, prefix + "heater")
                .hungButton(prefix + "gull");
    }
}
