package slackwater.simulator.junit;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Hands a test a virtual bench with a rig on it, fresh for every test, with nobody in the yard. On a test method or on its
 * class; the method's own counts. A test may ask for a {@code VirtualBench}, the {@code Rig}, the {@code Show}, the
 * {@code List<CueCode>} that the rig's {@code lib} brings, and the {@code Keeper} who can open the yard.
 *
 * <p>A rig with errors fails the test with its findings. A test that fails also says the seed, a line that runs it again,
 * and the last {@value BenchLog#MOST} things that happened on the bench.
 */
@Documented
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(RigBenchExtension.class)
public @interface RigBench {
    /** The system property that takes the place of {@link #seed}, to run a test with another one. */
    String SEED_PROPERTY = "slackwater.seed";

    /** The rig's folder, looked for in the working folder and then in every folder above it. */
    String folder();

    /** Which show, where the rig has several. */
    String show() default "";

    /** The seed of every draw. */
    long seed() default 1;
}
