package slackwater.controller.cue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import slackwater.controller.image.Places;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Timer;
import slackwater.model.Cue;
import slackwater.model.Step;

/** A cue's steps, compiled into passages with awaits and choices between them. */
final class StepsPlaying implements Playing {
    private static final long STARTS_MAX = Long.MAX_VALUE;

    private final Part[] parts;
    private final Count at;
    private final Count start;
    private final Flag hasEntered;

    StepsPlaying(final Cue cue, final Places places, final Layout layout, final CueCode.Numbers draws) {
        final String place = "cue." + cue.name();
        parts = compile(cue.steps(), new Making(places, layout, place, draws));
        at = layout.count(place + ".at", parts.length);
        start = layout.count(place + ".start", STARTS_MAX);
        hasEntered = layout.flag(place + ".entered");
    }

    @Override
    public void begin(final RunState run, final long startNumber) {
        at.set(run, 0);
        start.set(run, startNumber);
        hasEntered.set(run, false);
    }

    @Override
    public boolean goOn(final RunState run, final Asking asking) {
        while (at.of(run) < parts.length) {
            final Part part = parts[(int) at.of(run)];
            if (!hasEntered.is(run)) {
                part.enter(run, start.of(run));
                hasEntered.set(run, true);
            }
            switch (part.goOn(run, asking)) {
                case STAYS -> {
                    return true;
                }
                case BREAKS_OFF -> {
                    end(run);
                    return false;
                }
                case IS_OVER -> {
                    part.leave(run);
                    at.set(run, at.of(run) + 1);
                    hasEntered.set(run, false);
                }
            }
        }
        end(run);
        return false;
    }

    @Override
    public void end(final RunState run) {
        for (final Part part : parts) {
            part.leave(run);
        }
        at.set(run, 0);
        hasEntered.set(run, false);
    }

    @Override
    public int[] outputs() {
        return Arrays.stream(parts).flatMapToInt(Part::outputs).distinct().toArray();
    }

    private enum Going {
        STAYS,
        IS_OVER,
        BREAKS_OFF
    }

    private interface Part {
        void enter(RunState run, long startNumber);

        Going goOn(RunState run, Asking asking);

        void leave(RunState run);

        IntStream outputs();
    }

    private record Making(Places places, Layout layout, String place, CueCode.Numbers draws) {
        Passage passage(final List<Step> steps, final String name, final int firstDraw) {
            return new Passage(steps, places, layout, place + "." + name, firstDraw, draws);
        }
    }

    private static Part[] compile(final List<Step> steps, final Making making) {
        final List<Part> parts = new ArrayList<>();
        final List<Step> open = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            final Step step = steps.get(i);
            if (step instanceof Step.Await await) {
                close(open, parts, making, i);
                parts.add(new Waiting(await, making, i));
            } else if (step instanceof Step.OneOf oneOf) {
                close(open, parts, making, i);
                parts.add(new Choice(oneOf, making, i));
            } else {
                open.add(step);
            }
        }
        close(open, parts, making, steps.size());
        return parts.toArray(Part[]::new);
    }

    private static void close(
            final List<Step> open, final List<Part> parts, final Making making, final int endsBefore) {
        if (!open.isEmpty()) {
            final int first = endsBefore - open.size();
            parts.add(new Choice(new Step.OneOf(List.of(List.copyOf(open))), making, first));
            open.clear();
        }
    }

    private static final class Waiting implements Part {
        private final int input;
        private final boolean wantsActive;
        private final boolean goesOn;
        private final long atMostNs;
        private final Timer atMost;

        Waiting(final Step.Await await, final Making making, final int index) {
            input = making.places().input(await.condition().input());
            wantsActive = await.condition().isActive();
            goesOn = await.goesOn();
            atMostNs = await.atMost().toNanos();
            atMost = making.layout().timer(making.place() + ".await." + index);
        }

        @Override
        public void enter(final RunState run, final long startNumber) {
            atMost.start(run, atMostNs);
        }

        @Override
        public Going goOn(final RunState run, final Asking asking) {
            final boolean isProven = wantsActive ? asking.isProvenActive(input) : asking.isProvenInactive(input);
            if (isProven) {
                return Going.IS_OVER;
            }
            if (!atMost.isDue(run)) {
                return Going.STAYS;
            }
            return goesOn ? Going.IS_OVER : Going.BREAKS_OFF;
        }

        @Override
        public void leave(final RunState run) {
            atMost.stop(run);
        }

        @Override
        public IntStream outputs() {
            return IntStream.empty();
        }
    }

    /** One of several passages; a plain passage is a choice of one. */
    private static final class Choice implements Part {
        /** Room for the draws of one passage, so that no two share a number. */
        private static final int DRAWS_EACH = 1_000;

        private final Passage[] passages;
        private final int draw;
        private final CueCode.Numbers draws;
        private final Count chosen;

        Choice(final Step.OneOf oneOf, final Making making, final int index) {
            draw = (index + 1) * DRAWS_EACH * DRAWS_EACH;
            draws = making.draws();
            chosen = making.layout()
                    .count(making.place() + ".choice." + index, oneOf.choices().size());
            passages = new Passage[oneOf.choices().size()];
            for (int i = 0; i < passages.length; i++) {
                final int first = draw + (i + 1) * DRAWS_EACH;
                passages[i] = making.passage(oneOf.choices().get(i), index + "." + i, first);
            }
        }

        @Override
        public void enter(final RunState run, final long startNumber) {
            chosen.set(run, passages.length == 1 ? 0 : draws.upTo(passages.length - 1L, startNumber, draw));
            passages[(int) chosen.of(run)].begin(run, startNumber);
        }

        @Override
        public Going goOn(final RunState run, final Asking asking) {
            return passages[(int) chosen.of(run)].goOn(run, asking) ? Going.STAYS : Going.IS_OVER;
        }

        @Override
        public void leave(final RunState run) {
            for (final Passage passage : passages) {
                passage.end(run);
            }
        }

        @Override
        public IntStream outputs() {
            return Arrays.stream(passages).flatMapToInt(Passage::outputs);
        }
    }
}
