package slackwater.simulator.referee;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import org.junit.jupiter.api.Test;

final class RefereeApartTest {
    @Test
    void it_shares_no_code_with_what_it_judges() {
        ArchRuleDefinition.classes()
                .that()
                .resideInAPackage("slackwater.simulator.referee")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        "java..",
                        "org.jspecify..",
                        "slackwater.model..",
                        "slackwater.simulator.referee",
                        "slackwater.simulator.yard")
                .check(new ClassFileImporter()
                        .withImportOption(location -> !location.contains("test-classes"))
                        .importPackages("slackwater.simulator.referee"));
    }
}
