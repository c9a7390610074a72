package slackwater.controller;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import slackwater.controller.pins.Pins;
import slackwater.controller.watchdog.ScanSupervisor;

@AnalyzeClasses(packages = "slackwater.controller", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final List<String> STAGES = List.of("input", "cue", "mode", "guard", "driver");
    /** Programs, the page and the link live with the world outside: its time, its threads and its libraries. */
    private static final String[] OUTSIDE = {
        "slackwater.controller.app..",
        "slackwater.controller.page..",
        "slackwater.controller.link..",
        "slackwater.controller.live..",
        "slackwater.controller.disk..",
        "slackwater.controller.gpio..",
        "slackwater.controller.install.."
    };

    private static String[] packages(final List<String> names) {
        return names.stream()
                .map(each -> "slackwater.controller." + each + "..")
                .toArray(String[]::new);
    }

    private static String[] with(final String[] some, final String... more) {
        return Arrays.stream(new String[][] {some, more})
                .flatMap(Arrays::stream)
                .toArray(String[]::new);
    }

    /** A rule over nothing is always green. */
    @ArchTest
    static void thereIsSomethingToJudge(final JavaClasses read) {
        assertThat(read).hasSizeGreaterThanOrEqualTo(60);
        for (final String stage : STAGES) {
            assertThat(read.stream().anyMatch(each -> each.getPackageName().equals("slackwater.controller." + stage)))
                    .as("stage %s has classes", stage)
                    .isTrue();
        }
    }

    @ArchTest
    static final ArchRule theControllerKnowsNoSimulatorAndNoPaper = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("slackwater.simulator..", "slackwater.wiring..")
            .because("what runs in the yard contains no fault code and no \"if simulated\"");

    @ArchTest
    static void stagesTalkOnlyThroughTheImage(final JavaClasses read) {
        for (final String stage : STAGES) {
            final List<String> others =
                    STAGES.stream().filter(each -> !each.equals(stage)).collect(Collectors.toList());
            noClasses()
                    .that()
                    .resideInAPackage("slackwater.controller." + stage + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(with(packages(others), packages(List.of("plan", "scan", "watchdog"))))
                    .because("each stage is tried and proved by itself; ask the plan to hand over what it needs")
                    .check(read);
        }
    }

    @ArchTest
    static final ArchRule onlyInputsAmongTheStagesSeePins = noClasses()
            .that()
            .resideInAnyPackage(packages(List.of("cue", "mode", "guard", "driver")))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("slackwater.controller.pins..")
            .because("a cue may ask and a guard may judge, but neither touches a pin");

    @ArchTest
    static final ArchRule onlyPlanAndScanKnowTheStages = noClasses()
            .that()
            .resideOutsideOfPackages(with(with(packages(STAGES), packages(List.of("plan", "scan"))), OUTSIDE))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(packages(STAGES))
            .because("the page that shows who asks whom is the plan, and there is one such page");

    @ArchTest
    static final ArchRule pinsAreWrittenBehindTheGateOnly = noClasses()
            .that()
            .resideOutsideOfPackage("slackwater.controller.pins..")
            .should()
            .callMethodWhere(target(owner(assignableTo(Pins.class)))
                    .and(target(name("write")).or(target(name("writeHoldUp")))))
            .because("a write that does not pass the gate cannot be stopped by the supervisor (S8)");

    @ArchTest
    static final ArchRule timeAndChanceArePassedIn = noClasses()
            .that()
            .resideOutsideOfPackages(OUTSIDE)
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
            .dependOnClassesThat()
            .areAssignableTo(Random.class)
            .because("the same run must give the same journal: take nowNs, or the seeded draws, as a parameter");

    /** The supervisor alone is excepted: rest writes may hang, so it hands them to a thread that it can give up (S8). */
    @ArchTest
    static final ArchRule theScanHasNoThreads = noClasses()
            .that()
            .resideOutsideOfPackages(OUTSIDE)
            .and()
            .doNotBelongToAnyOf(ScanSupervisor.class)
            .should()
            .dependOnClassesThat()
            .areAssignableTo(Thread.class)
            .orShould()
            .dependOnClassesThat()
            .haveNameMatching("java\\.util\\.concurrent\\.(.*Executor.*|locks\\..*|Future|CompletableFuture|Timer)")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.util.Timer.class)
            .because(
                    "one thread makes every decision, so that a run can be repeated; other threads use the command desk");

    @ArchTest
    static final ArchRule nothingIsKeptInAnOrderThatDiffersBetweenRuns = noClasses()
            .that()
            .resideOutsideOfPackages(OUTSIDE)
            .should()
            .callMethodWhere(target(owner(type(Set.class)).or(owner(type(Map.class))))
                    .and(target(name("of")).or(target(name("copyOf"))).or(target(name("ofEntries")))))
            .orShould()
            .callConstructor(HashMap.class)
            .orShould()
            .callConstructor(HashSet.class)
            .orShould()
            .callMethod(Collectors.class, "toSet")
            .because("their order differs from one Java machine to the next: use a list, or a TreeMap");

    @ArchTest
    static final ArchRule onlyProgramsKnowTheLibrariesOfPrograms = noClasses()
            .that()
            .resideOutsideOfPackages(OUTSIDE)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("picocli..", "com.fasterxml.jackson..", "org.slf4j..", "java.io..", "java.net..")
            .because("the scan neither parses nor prints nor logs: it hands records to the journal's port");

    @ArchTest
    static final ArchRule onePackageKnowsTheGpioLibrary = noClasses()
            .that()
            .resideOutsideOfPackage("slackwater.controller.gpio..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.pi4j..")
            .because("moving on to its next version must be one package's work");

    @ArchTest
    static final ArchRule packagesFormNoRing =
            slices().matching("slackwater.controller.(*)..").should().beFreeOfCycles();
}
