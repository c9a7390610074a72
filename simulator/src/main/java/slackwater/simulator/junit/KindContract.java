package slackwater.simulator.junit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slackwater.controller.app.RigLoader.Loaded;
import slackwater.controller.cue.CueCode;
import slackwater.controller.cue.ShapedKind;
import slackwater.controller.image.Places;
import slackwater.controller.run.Layout;
import slackwater.model.Controller;
import slackwater.model.Cue;
import slackwater.model.Output;
import slackwater.model.Rig;
import slackwater.model.Show;
import slackwater.model.kind.BuiltInInput;
import slackwater.model.kind.BuiltInOutput;
import slackwater.model.kind.InputKind;
import slackwater.model.kind.OutputKind;

/**
 * What a kind or a cue in code from outside the project must keep (S25), tried on a rig and a show that use it: it remembers
 * in the run's own cells and nowhere else, so that a run can be forked, compared, hashed, and its quiet scans passed over.
 *
 * <ul>
 *   <li>every field of its classes, of what they make and of what they hold is final and holds nothing that can change;
 *   <li>a run forked at random moments goes the same way as its fork, and as a run that nobody forked;
 *   <li>the same run twice, and with quiet scans passed over or not, gives the same digest;
 *   <li>its word and its keys are lower case with hyphens, and every key says what it means.
 * </ul>
 *
 * In a test: {@code KindContract.of(rig, show, codes).check();}
 */
public final class KindContract {
    private final Rig rig;
    private final Show show;
    private final List<CueCode> codes;
    private final long seed;

    private KindContract(final Rig rig, final Show show, final List<CueCode> codes, final long seed) {
        this.rig = rig;
        this.show = show;
        this.codes = List.copyOf(codes);
        this.seed = seed;
    }

    /** The contract of everything in a rig and its show that comes from outside the project. */
    public static KindContract of(final Rig rig, final Show show, final List<CueCode> codes) {
        return new KindContract(rig, show, codes, 1);
    }

    /** The contract of everything in a loaded rig folder that comes from outside the project. */
    public static KindContract of(final Loaded loaded) {
        return of(
                loaded.rig().orElseThrow(() -> new IllegalArgumentException("the rig has errors:\n" + loaded.text())),
                loaded.show(),
                loaded.codes());
    }

    /** The same with another choice of moments and visitors. */
    public KindContract withSeed(final long next) {
        return new KindContract(rig, show, codes, next);
    }

    /** Throws an {@link AssertionError} that lists every breach. */
    public void check() {
        final List<String> breaches = breaches();
        if (!breaches.isEmpty()) {
            throw new AssertionError("what comes from outside the project breaks its contract (seed " + seed + "):\n- "
                    + String.join("\n- ", breaches));
        }
    }

    /** Every breach in words; empty when the contract is kept. */
    public List<String> breaches() {
        final Set<String> words = outsideWords();
        if (words.isEmpty()) {
            return List.of("rig \"" + rig.name() + "\" and show \"" + show.name()
                    + "\" use no kind and no cue in code from outside the project, so nothing was tried");
        }
        final List<String> breaches = new ArrayList<>();
        breaches.addAll(wordBreaches());
        breaches.addAll(fieldBreaches());
        breaches.addAll(behaviourBreaches());
        return breaches;
    }

    /** Breaches in how the kinds and cues are called and documented. */
    List<String> wordBreaches() {
        final List<String> breaches = new ArrayList<>();
        outputKinds().forEach(kind -> breaches.addAll(KindWords.breaches(kind.getClass(), kind.word(), kind.keys())));
        inputKinds().forEach(kind -> breaches.addAll(KindWords.breaches(kind.getClass(), kind.word(), kind.keys())));
        usedCodes().forEach(code -> breaches.addAll(KindWords.breaches(code.getClass(), code.word(), code.keys())));
        return breaches;
    }

    /** Breaches that show in the classes, whatever a run does. */
    List<String> fieldBreaches() {
        final HiddenState hidden = new HiddenState();
        inputKinds().forEach(hidden::look);
        for (final OutputKind kind : outputKinds()) {
            hidden.look(kind);
            if (kind instanceof ShapedKind shaped) {
                outputsOf(kind).forEach(output -> hidden.look(shaped.shape(output, new Layout())));
            }
        }
        for (final CueCode code : usedCodes()) {
            hidden.look(code);
            cuesOf(code).forEach(cue -> lookAtPlaying(hidden, code, cue));
        }
        return hidden.found();
    }

    /** Breaches that show in a run, whatever the classes look like. */
    List<String> behaviourBreaches() {
        final List<String> outputs = outputKinds().stream()
                .flatMap(this::outputsOf)
                .map(Output::name)
                .toList();
        final List<String> cues =
                usedCodes().stream().flatMap(this::cuesOf).map(Cue::name).toList();
        return new ContractRuns(rig, show, codes, seed).breaches(String.join(", ", outsideWords()), outputs, cues);
    }

    private void lookAtPlaying(final HiddenState hidden, final CueCode code, final Cue cue) {
        for (final Controller controller : rig.controllers()) {
            final Places places = Places.of(rig, controller.name());
            if (places.zones().stream().anyMatch(zone -> zone.name().equals(cue.zone()))) {
                hidden.look(code.compile(cue, places, new Layout(), (most, start, step) -> 0));
            }
        }
    }

    private Set<String> outsideWords() {
        final Set<String> words = new LinkedHashSet<>();
        outputKinds().forEach(kind -> words.add(kind.word()));
        inputKinds().forEach(kind -> words.add(kind.word()));
        usedCodes().forEach(code -> words.add(code.word()));
        return words;
    }

    private List<OutputKind> outputKinds() {
        return rig.outputs().stream()
                .map(Output::kind)
                .filter(kind -> !(kind instanceof BuiltInOutput))
                .distinct()
                .toList();
    }

    private List<InputKind> inputKinds() {
        return rig.inputs().stream()
                .map(input -> input.kind())
                .filter(kind -> !(kind instanceof BuiltInInput))
                .distinct()
                .toList();
    }

    private List<CueCode> usedCodes() {
        return codes.stream().filter(code -> cuesOf(code).findAny().isPresent()).toList();
    }

    private Stream<Output> outputsOf(final OutputKind kind) {
        return rig.outputs().stream().filter(output -> output.kind().equals(kind));
    }

    private Stream<Cue> cuesOf(final CueCode code) {
        return show.cues().stream().filter(cue -> cue.code().equals(Optional.of(code.word())));
    }
}
