package slackwater.simulator.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The digest of an evening is the same in any Java machine and with any of its compilers. */
final class SameEverywhereTest {
    private static final Pattern DIGEST = Pattern.compile("\"digest\"\\s*:\\s*\"([0-9a-f]{64})\"");

    @Test
    void two_java_machines_and_the_simple_compiler_alone_give_one_digest() throws Exception {
        final String usual = digest(List.of());
        assertThat(digest(List.of())).isEqualTo(usual);
        assertThat(digest(List.of("-XX:TieredStopAtLevel=1"))).isEqualTo(usual);
    }

    private static String digest(final List<String> options) throws IOException, InterruptedException {
        final List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of(
                "-cp",
                System.getProperty("java.class.path"),
                "slackwater.simulator.app.Slackwater",
                "simulate",
                Path.of("..", "rigs", "sea-cave").toString(),
                "--hours",
                "1",
                "--json"));
        final Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        final String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
        final Matcher found = DIGEST.matcher(out);
        assertThat(found.find()).as(out).isTrue();
        return found.group(1);
    }
}
