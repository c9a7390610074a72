package slackwater.model;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Random;

@AnalyzeClasses(packages = "slackwater.model", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** A rule over nothing is always green. */
    @ArchTest
    static void thereIsSomethingToJudge(final JavaClasses read) {
        assertThat(read).hasSizeGreaterThanOrEqualTo(30);
    }

    @ArchTest
    static final ArchRule everybodyKnowsTheModelAndItKnowsNobody = noClasses()
            .that()
            .resideInAPackage("slackwater.model..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("slackwater.controller..", "slackwater.simulator..", "slackwater.wiring..")
            .because("dependencies point one way, so that the small computer carries only what it needs");

    @ArchTest
    static final ArchRule whatARigIsDoesNotDependOnHowItIsWritten = noClasses()
            .that()
            .resideInAnyPackage(
                    "slackwater.model",
                    "slackwater.model.kind..",
                    "slackwater.model.quantity..",
                    "slackwater.model.finding..",
                    "slackwater.model.event..",
                    "slackwater.model.board..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("slackwater.model.file..", "slackwater.model.check..")
            .because("a rig built in code is as good as one read from a file");

    @ArchTest
    static final ArchRule timeAndChanceArePassedIn = noClasses()
            .that()
            .resideInAPackage("slackwater.model..")
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethodWhere(target(owner(resideInAPackage("java.time"))).and(target(name("now"))))
            .orShould()
            .callMethodWhere(target(owner(type(Thread.class))).and(target(name("sleep"))))
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(Random.class)
            .because("the same run must give the same journal: take the time and a seeded stream as parameters");
}
