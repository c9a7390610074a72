package slackwater.simulator;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.security.SecureRandom;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.ThreadLocalRandom;
import slackwater.controller.app.CheckCommand;
import slackwater.controller.app.InstallCommand;
import slackwater.controller.app.Programs;
import slackwater.controller.app.RestCommand;
import slackwater.controller.app.RigLoader;
import slackwater.controller.app.RunCommand;
import slackwater.simulator.yard.Truth;

@AnalyzeClasses(packages = "slackwater.simulator", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String APP = "slackwater.simulator.app..";
    private static final String JUNIT = "slackwater.simulator.junit..";
    private static final String CONTROLLER = "slackwater.controller..";

    /** A rule over nothing is always green. */
    @ArchTest
    static void thereIsSomethingToJudge(final JavaClasses read) {
        assertThat(read).hasSizeGreaterThanOrEqualTo(80);
        assertThat(read.stream().map(JavaClass::getPackageName).distinct())
                .contains(
                        "slackwater.simulator.app",
                        "slackwater.simulator.bench",
                        "slackwater.simulator.evening",
                        "slackwater.simulator.junit",
                        "slackwater.simulator.referee",
                        "slackwater.simulator.report",
                        "slackwater.simulator.visitor",
                        "slackwater.simulator.yard");
    }

    @ArchTest
    static final ArchRule onlyProgramsAndTestsKnowHowRigsAreLoaded = noClasses()
            .that()
            .resideOutsideOfPackages(APP, JUNIT)
            .should()
            .dependOnClassesThat()
            .resideInAPackage("slackwater.controller.app..")
            .because("an evening is given a rig and does not mind where it came from");

    @ArchTest
    static final ArchRule ofTheControllersProgramItsCommandsAloneAreShared = noClasses()
            .should()
            .dependOnClassesThat(resideInAPackage("slackwater.controller.app..")
                    .and(DescribedPredicate.not(partOf(RigLoader.class)
                            .or(partOf(Programs.class))
                            .or(partOf(CheckCommand.class))
                            .or(partOf(RunCommand.class))
                            .or(partOf(RestCommand.class))
                            .or(partOf(InstallCommand.class)))))
            .because("the program on the small computer is packaged by itself, and grows by itself");

    @ArchTest
    static final ArchRule theRefereeSeesTheModelAndWhatIsTrue = classes()
            .that()
            .resideInAPackage("slackwater.simulator.referee..")
            .should()
            .onlyDependOnClassesThat(resideInAPackage("java..")
                    .or(resideInAPackage("org.jspecify.."))
                    .or(resideInAPackage("slackwater.model.."))
                    .or(resideInAPackage("slackwater.simulator.referee.."))
                    .or(type(Truth.class)))
            .because("it shares no code with what it judges (S20)");

    @ArchTest
    static final ArchRule theWorldKnowsNoController = noClasses()
            .that()
            .resideInAnyPackage("slackwater.simulator.yard..", "slackwater.simulator.visitor..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(CONTROLLER)
            .because("air, heat and people do not mind what a controller believes");

    @ArchTest
    static final ArchRule aReportKnowsNoController = noClasses()
            .that()
            .resideInAPackage("slackwater.simulator.report..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(CONTROLLER)
            .because("it tells what was recorded, whoever recorded it");

    @ArchTest
    static final ArchRule theProgramDoesWithoutTheTestLibrary = noClasses()
            .that()
            .resideOutsideOfPackage(JUNIT)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(JUNIT, "org.junit..")
            .because("the test library is not packed with the program");

    @ArchTest
    static final ArchRule timeIsPassedIn = noClasses()
            .that()
            .resideOutsideOfPackage(APP)
            .should()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethodWhere(target(owner(resideInAPackage("java.time"))).and(target(name("now"))))
            .orShould()
            .callMethodWhere(target(owner(type(Thread.class))).and(target(name("sleep"))))
            .because("a run goes by its own time, and is the same every time");

    @ArchTest
    static final ArchRule chanceIsSeeded = noClasses()
            .should()
            .callMethod(Math.class, "random")
            .orShould()
            .callConstructor(Random.class)
            .orShould()
            .callConstructor(SplittableRandom.class)
            .orShould()
            .dependOnClassesThat(type(ThreadLocalRandom.class).or(type(SecureRandom.class)))
            .because("the same seed must give the same evening");

    /** The order of these differs from one start of Java to the next. */
    @ArchTest
    static final ArchRule noCollectionHasAnOrderOfTheDay = noClasses()
            .should()
            .callMethodWhere(unordered(Set.class).or(unordered(Map.class)))
            .because("whoever walks over one gets another run every day: a list or a tree keeps its order");

    private static DescribedPredicate<JavaAccess<?>> unordered(final Class<?> collection) {
        return target(owner(type(collection)))
                .and(target(nameMatching("of|ofEntries|copyOf")))
                .as("%s.of", collection.getSimpleName())
                .forSubtype();
    }

    private static DescribedPredicate<JavaClass> partOf(final Class<?> whole) {
        return nameMatching(java.util.regex.Pattern.quote(whole.getName()) + "(\\$.*)?")
                .forSubtype();
    }
}
