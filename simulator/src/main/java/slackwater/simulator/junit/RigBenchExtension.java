package slackwater.simulator.junit;

import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.extension.ExtensionConfigurationException;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;
import org.junit.platform.commons.support.AnnotationSupport;
import slackwater.controller.app.RigLoader;
import slackwater.controller.app.RigLoader.Loaded;
import slackwater.controller.cue.CueCode;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.event.Spans;
import slackwater.simulator.bench.Setup;
import slackwater.simulator.bench.VirtualBench;
import slackwater.simulator.evening.EveningPlan;
import slackwater.simulator.evening.Keeper;

/** What {@link RigBench} does. */
final class RigBenchExtension implements ParameterResolver, TestExecutionExceptionHandler {
    private static final Namespace OURS = Namespace.create(RigBenchExtension.class);
    private static final String CODES = "java.util.List<" + CueCode.class.getName() + ">";

    /** One test's bench and what it was made of. */
    private record Made(Loaded loaded, Rig rig, VirtualBench bench, BenchLog log, long seed) {
        Optional<Object> as(final Type wanted) {
            if (wanted.getTypeName().equals(CODES)) {
                return Optional.of(loaded.codes());
            }
            final List<Object> offered = List.of(bench, rig, loaded.show(), new Keeper(rig, loaded.show()));
            return offered.stream().filter(each -> each.getClass() == wanted).findFirst();
        }
    }

    @Override
    public boolean supportsParameter(final ParameterContext parameter, final ExtensionContext context) {
        final Type wanted = parameter.getParameter().getParameterizedType();
        return context.getTestMethod().isPresent()
                && (wanted == VirtualBench.class
                        || wanted == Rig.class
                        || wanted == Show.class
                        || wanted == Keeper.class
                        || wanted.getTypeName().equals(CODES));
    }

    @Override
    public Object resolveParameter(final ParameterContext parameter, final ExtensionContext context) {
        final Type wanted = parameter.getParameter().getParameterizedType();
        final Made made = context.getStore(OURS).getOrComputeIfAbsent(Made.class, key -> make(context), Made.class);
        return made.as(wanted).orElseThrow(() -> new ExtensionConfigurationException("no bench offers " + wanted));
    }

    @Override
    public void handleTestExecutionException(final ExtensionContext context, final Throwable failure) throws Throwable {
        final Optional<Made> made = Optional.ofNullable(context.getStore(OURS).get(Made.class, Made.class));
        made.ifPresent(bench -> failure.addSuppressed(new BenchStory(story(context, bench))));
        throw failure;
    }

    private static Made make(final ExtensionContext context) {
        final RigBench wanted = annotation(context);
        final Path folder = find(Path.of("").toAbsolutePath(), wanted.folder());
        final Optional<String> show = Optional.of(wanted.show()).filter(name -> !name.isEmpty());
        final Loaded loaded = RigLoader.load(folder, show);
        final Rig rig = loaded.rig()
                .orElseThrow(() -> new ExtensionConfigurationException(
                        "the rig " + folder + " cannot be put on a bench:\n" + loaded.text()));
        final long seed = Long.getLong(RigBench.SEED_PROPERTY, wanted.seed());
        final BenchLog log = new BenchLog(rig);
        final VirtualBench bench = new VirtualBench(Setup.of(rig, loaded.show())
                        .withSeed(seed)
                        .withCodes(loaded.codes())
                        .startingAt(EveningPlan.startOf(rig, loaded.show())))
                .listen(log);
        return new Made(loaded, rig, bench, log, seed);
    }

    private static RigBench annotation(final ExtensionContext context) {
        return AnnotationSupport.findAnnotation(context.getTestMethod(), RigBench.class)
                .or(() -> AnnotationSupport.findAnnotation(context.getTestClass(), RigBench.class))
                .orElseThrow(() -> new ExtensionConfigurationException(
                        "write @RigBench(folder = \"...\") on the test or on its class"));
    }

    /** Tests run in the folder of a module as well as in that of the whole project; both find the rigs beside them. */
    static Path find(final Path from, final String folder) {
        Optional<Path> at = Optional.of(from);
        while (at.isPresent()) {
            final Path candidate = at.get().resolve(folder);
            if (Files.isDirectory(candidate)) {
                return candidate;
            }
            at = Optional.ofNullable(at.get().getParent());
        }
        throw new ExtensionConfigurationException(
                "there is no folder " + folder + " in " + from + " or in a folder above it");
    }

    private static String story(final ExtensionContext context, final Made made) {
        final String test = context.getRequiredTestClass().getName()
                + context.getTestMethod()
                        .map(Method::getName)
                        .map(name -> "#" + name)
                        .orElse("");
        return "on the bench: rig " + made.rig().name() + ", show "
                + made.loaded().show().name() + ", seed "
                + made.seed() + ", " + Spans.text(made.bench().nowNs()) + " after its start\n"
                + "run it again: mvn test -Dtest='" + test + "' -D" + RigBench.SEED_PROPERTY + "=" + made.seed() + "\n"
                + made.log().text();
    }
}
