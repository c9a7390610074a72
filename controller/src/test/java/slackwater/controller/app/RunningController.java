package slackwater.controller.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import slackwater.controller.live.LineFile;

/** The program as a process of its own on virtual pins, with a rig that can be armed and set off from outside. */
final class RunningController implements AutoCloseable {
    static final String RIG = """
            [controller.porch]
            board = "pi-4"
            hold-up = { drop-out = "400 ms" }

            [arming]
            warning = "1 s"

            [input.loop]
            kind = "stop-loop"
            active = "high"
            active-after = "20 ms"

            [input.key]
            kind = "key"
            use = "arm"
            active = "high"

            [input.reset]
            kind = "button"
            use = "reset"
            active = "high"

            [input.path]
            kind = "motion"
            active = "high"
            active-after = "0 s"
            warm-up = "0 s"

            [output.lid]
            kind = "valve"
            active = "high"
            on-power-loss = "spring-returns"
            longest-on = "60 s"
            unguarded = "bench block, nothing fitted"

            [output.lamp]
            kind = "lamp"
            active = "low"
            unguarded = "12 V lamp, touch-safe"
            """;
    static final String SHOW = """
            [cue.greet]
            starts = "path"
            steps = [ { energise = ["lid", "lamp"], for = "50 s" } ]
            """;

    private static final long PATIENCE_MS = 30_000;
    private static final long HAND_MS = 200;
    private static final long ARMS_WITHIN_MS = 4_000;
    private static final int ATTEMPTS = 5;
    private static final long LOOK_MS = 10;

    private final Path folder;
    private final Process process;
    private final LineFile lines;

    RunningController(final Path folder, final String mainClass, final String... more) throws IOException {
        this.folder = folder;
        if (Files.notExists(folder.resolve("rig.toml"))) {
            Files.writeString(folder.resolve("rig.toml"), RIG);
            Files.createDirectories(folder.resolve("shows"));
            Files.writeString(folder.resolve("shows/evening.toml"), SHOW);
        }
        final List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-Xmx64m",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                mainClass));
        command.addAll(List.of(
                "run", folder.toString(), "--controller", "porch", "--pins", "virtual", "--state", state().toString()));
        command.addAll(List.of(more));
        process = new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out").toFile())
                .redirectError(folder.resolve("err").toFile())
                .start();
        lines = new LineFile(state());
    }

    static RunningController start(final Path folder) throws IOException, InterruptedException {
        final RunningController running = new RunningController(folder, ControllerProgram.class.getName());
        running.await("it runs", () -> running.out().contains("porch runs: 2 outputs at rest"));
        return running;
    }

    Path state() {
        return folder.resolve("state");
    }

    /** A condition that files show. */
    interface Seen {
        boolean isSo() throws IOException;
    }

    void await(final String what, final Seen seen) throws IOException, InterruptedException {
        for (long waited = 0; waited < PATIENCE_MS; waited += LOOK_MS) {
            if (seen.isSo()) {
                return;
            }
            if (!process.isAlive() && !seen.isSo()) {
                break;
            }
            Thread.sleep(LOOK_MS);
        }
        throw new AssertionError(
                "never came: " + what + "; out: " + out() + " err: " + err() + " journal: " + journal());
    }

    /** Exercises the stop loop, resets, arms, and lets somebody come: the lid is up. */
    void lidUp() throws IOException, InterruptedException {
        arm();
        press("path");
        await("the lid is up", () -> isHigh("lid"));
        await("the lamp is on", () -> !isHigh("lamp"));
    }

    /** As a person would: who was too quick for a busy computer does it again, and slower. */
    private void arm() throws IOException, InterruptedException {
        for (int attempt = 1; attempt <= ATTEMPTS && !isArmed(); attempt++) {
            final long slowMs = HAND_MS * attempt;
            press("key", false, slowMs);
            press("loop", false, slowMs);
            press("loop", true, slowMs);
            press("reset", true, slowMs);
            press("reset", false, slowMs);
            press("key", true, slowMs);
            for (long waited = 0; waited < ARMS_WITHIN_MS && !isArmed(); waited += LOOK_MS) {
                Thread.sleep(LOOK_MS);
            }
        }
        await("armed", this::isArmed);
    }

    private boolean isArmed() throws IOException {
        return journal().contains("\"mode\":\"ARMED\"");
    }

    private void press(final String button) throws IOException, InterruptedException {
        press(button, true, HAND_MS);
        press(button, false, HAND_MS);
    }

    private void press(final String button, final boolean isHigh, final long forMs)
            throws IOException, InterruptedException {
        lines.set(button, isHigh);
        Thread.sleep(forMs);
    }

    boolean isHigh(final String line) throws IOException {
        return lines.isHigh(line);
    }

    void areAtRest(final String when) throws IOException {
        assertThat(isHigh("lid")).as("lid %s", when).isFalse();
        assertThat(isHigh("lamp")).as("lamp, which is on while low, %s", when).isTrue();
    }

    void signal(final String name) throws IOException, InterruptedException {
        final Process kill = new ProcessBuilder("/bin/sh", "-c", "kill -" + name + " " + process.pid()).start();
        assertThat(kill.waitFor()).isZero();
    }

    int exitCode() throws InterruptedException {
        assertThat(process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS))
                .as("it ends")
                .isTrue();
        return process.exitValue();
    }

    boolean isAlive() {
        return process.isAlive();
    }

    String out() throws IOException {
        return Files.readString(folder.resolve("out"));
    }

    String err() throws IOException {
        return Files.readString(folder.resolve("err"));
    }

    String journal() throws IOException {
        if (Files.notExists(state())) {
            return "";
        }
        final StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(state())) {
            for (final Path file : files.sorted().toList()) {
                if (String.valueOf(file.getFileName()).startsWith("journal-")) {
                    all.append(Files.readString(file, StandardCharsets.UTF_8));
                }
            }
        }
        return all.toString();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
