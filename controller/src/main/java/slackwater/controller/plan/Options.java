package slackwater.controller.plan;

import java.util.List;
import java.util.function.Function;
import slackwater.controller.command.Secrets;
import slackwater.controller.cue.CueCode;

/**
 * What a plan needs beside the rig and its show.
 *
 * @param seed of every draw in the run
 * @param bootId of this start of the controller; requests quote it
 * @param secrets who may take a lock off
 * @param codes finds a cue in code by its word
 */
public record Options(long seed, long bootId, Secrets secrets, Function<String, CueCode> codes) {

    /** Nobody has a secret, and there is no cue in code. */
    public static Options plain(final long seed) {
        return new Options(seed, 1, noSecrets(), word -> {
            throw new IllegalArgumentException("no cue in code is called " + word);
        });
    }

    /** The same with cues in code. */
    public Options with(final List<CueCode> found) {
        return new Options(
                seed,
                bootId,
                secrets,
                word -> found.stream()
                        .filter(code -> code.word().equals(word))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("no cue in code is called " + word)));
    }

    private static Secrets noSecrets() {
        return new Secrets() {
            @Override
            public boolean isOwn(final String person, final String secret) {
                return false;
            }

            @Override
            public boolean isOverride(final String secret) {
                return false;
            }
        };
    }
}
