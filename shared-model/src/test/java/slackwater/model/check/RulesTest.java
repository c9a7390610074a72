package slackwater.model.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slackwater.model.finding.Finding;

class RulesTest {

    /** A rule that is written and tested but not listed would never look at anybody's rig. */
    @Test
    void everyRuleThatWasWrittenIsListedOnce() throws IOException, URISyntaxException {
        final Path classes = Path.of(
                Rule.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        try (Stream<Path> files = Files.list(classes.resolve("slackwater/model/check"))) {
            final List<String> written = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".class") && !name.contains("package-info"))
                    .map(name -> "slackwater.model.check." + name.substring(0, name.length() - ".class".length()))
                    .filter(RulesTest::isRule)
                    .toList();
            assertThat(Rules.all())
                    .extracting(rule -> rule.getClass().getName())
                    .containsExactlyInAnyOrderElementsOf(written);
            assertThat(written).hasSizeGreaterThan(20);
        }
    }

    private static boolean isRule(final String name) {
        try {
            final Class<?> found = Class.forName(name);
            return Rule.class.isAssignableFrom(found) && !found.isInterface();
        } catch (final ClassNotFoundException gone) {
            throw new IllegalStateException("class " + name + " was listed and is not there", gone);
        }
    }

    @Test
    void findingsOfAllRulesAreInTheOrderOfTheFiles() {
        final List<Finding> findings = Rules.check(Sketch.rig()
                .with(Out.valve("lid").pin(8), Out.valve("jet").pin(8))
                .draft());
        assertThat(findings)
                .extracting(finding -> finding.at().orElseThrow().file() + " " + finding.code())
                .containsExactly(
                        "output.jet/longest-on no-longest-on",
                        "output.jet/on-power-loss no-on-power-loss",
                        "output.jet/pin energised-at-boot",
                        "output.jet/pin pin-taken",
                        "output.jet/unguarded unguarded",
                        "output.lid/longest-on no-longest-on",
                        "output.lid/on-power-loss no-on-power-loss",
                        "output.lid/pin energised-at-boot",
                        "output.lid/unguarded unguarded");
    }
}
