package slackwater.model.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.function.Function;

/**
 * Every kind that a rig file may name: those of the project first, then those that the standard service loader finds. A
 * kind from outside cannot take the word of one that is already there.
 */
public final class Kinds {
    private final List<InputKind> inputs = new ArrayList<>(List.of(BuiltInInput.values()));
    private final List<OutputKind> outputs = new ArrayList<>(List.of(BuiltInOutput.values()));
    private final List<String> troubles = new ArrayList<>();

    private Kinds() {}

    /** The project's kinds and those that a class loader offers. */
    public static Kinds of(final ClassLoader loader) {
        final Kinds kinds = new Kinds();
        kinds.addAll(ServiceLoader.load(InputKind.class, loader), kinds.inputs, InputKind::word);
        kinds.addAll(ServiceLoader.load(OutputKind.class, loader), kinds.outputs, OutputKind::word);
        return kinds;
    }

    public Optional<InputKind> input(final String word) {
        return inputs.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    public Optional<OutputKind> output(final String word) {
        return outputs.stream().filter(kind -> kind.word().equals(word)).findFirst();
    }

    public List<String> inputWords() {
        return inputs.stream().map(InputKind::word).toList();
    }

    public List<String> outputWords() {
        return outputs.stream().map(OutputKind::word).toList();
    }

    /** Kinds from outside that could not be taken, each in one line. */
    public List<String> troubles() {
        return List.copyOf(troubles);
    }

    private <T> void addAll(final ServiceLoader<T> found, final List<T> known, final Function<T, String> word) {
        final var each = found.iterator();
        try {
            while (each.hasNext()) {
                final T kind = each.next();
                final boolean isTaken = known.stream()
                        .map(word)
                        .anyMatch(taken -> taken.equals(word.apply(kind).toLowerCase(Locale.ROOT)));
                if (isTaken) {
                    troubles.add(kind.getClass().getName() + " takes the word \"" + word.apply(kind)
                            + "\", which another kind has");
                } else {
                    known.add(kind);
                }
            }
        } catch (final ServiceConfigurationError | LinkageError broken) {
            troubles.add(String.valueOf(broken.getMessage()));
        }
    }
}
