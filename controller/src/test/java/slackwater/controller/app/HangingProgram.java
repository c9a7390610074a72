package slackwater.controller.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.locks.LockSupport;
import picocli.CommandLine;
import slackwater.controller.gpio.Lines;
import slackwater.model.Pull;

/** The program with inputs that hang, or find no memory, once a file beside the rig says so. */
final class HangingProgram {
    private HangingProgram() {}

    public static void main(final String[] arguments) {
        final Path folder = Path.of(arguments[1]);
        final CommandLine run = new CommandLine(new RunCommand(lines -> new HangingLines(lines, folder)));
        System.exit(Programs.run(run, Arrays.copyOfRange(arguments, 1, arguments.length)));
    }

    private record HangingLines(Lines lines, Path folder) implements Lines {
        @Override
        public Out claimOutput(final Wire wire, final boolean isHigh) {
            return lines.claimOutput(wire, isHigh);
        }

        @Override
        public In claimInput(final Wire wire, final Pull pull) {
            return new HangingIn(lines.claimInput(wire, pull), folder);
        }

        @Override
        public void release() {
            lines.release();
        }
    }

    private record HangingIn(Lines.In in, Path folder) implements Lines.In {
        @Override
        public boolean isHigh() {
            if (Files.exists(folder.resolve("exhaust"))) {
                throw new OutOfMemoryError("as a test asked");
            }
            while (Files.exists(folder.resolve("hang"))) {
                LockSupport.parkNanos(this, 1_000_000_000L);
            }
            return in.isHigh();
        }

        @Override
        public boolean takeEdges() {
            return in.takeEdges();
        }
    }
}
