package slackwater.wiring;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "slackwater.wiring", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** A rule over nothing is always green. */
    @ArchTest
    static void thereIsSomethingToJudge(final JavaClasses read) {
        assertThat(read).hasSizeGreaterThanOrEqualTo(3);
    }

    @ArchTest
    static final ArchRule paperKnowsOnlyTheModel = classes()
            .that()
            .resideInAPackage("slackwater.wiring..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "slackwater.wiring..",
                    "slackwater.model..",
                    "java..",
                    "com.fasterxml.jackson..",
                    "org.slf4j..",
                    "org.jspecify..")
            .because("the sheet is the rig on paper: it must be the same whether or not anything runs");
}
