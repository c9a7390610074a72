package slackwater.controller.gpio;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slackwater.model.Pull;

/** Lines in memory that tell what was asked of them, and refuse one when told to. */
final class FakeLines implements Lines {
    final List<String> told = new ArrayList<>();
    final Map<String, Boolean> level = new LinkedHashMap<>();
    final Map<String, Boolean> edges = new LinkedHashMap<>();
    String refused = "";

    private void refuse(final Wire wire) {
        if (wire.name().equals(refused)) {
            throw new LineRefusedException(wire + " is busy");
        }
    }

    @Override
    public Out claimOutput(final Wire wire, final boolean isHigh) {
        refuse(wire);
        told.add("claim " + wire + (isHigh ? " high" : " low"));
        level.put(wire.name(), isHigh);
        return new Out() {
            @Override
            public void write(final boolean isNowHigh) {
                told.add("write " + wire.name() + (isNowHigh ? " high" : " low"));
                level.put(wire.name(), isNowHigh);
            }

            @Override
            public boolean isPadHigh() {
                return level.getOrDefault(wire.name(), false);
            }
        };
    }

    @Override
    public In claimInput(final Wire wire, final Pull pull) {
        refuse(wire);
        told.add("sense " + wire + " pull " + pull);
        level.put(wire.name(), pull == Pull.UP);
        return new In() {
            @Override
            public boolean isHigh() {
                return level.getOrDefault(wire.name(), false);
            }

            @Override
            public boolean takeEdges() {
                return Boolean.TRUE.equals(edges.put(wire.name(), false));
            }
        };
    }

    @Override
    public void release() {
        told.add("release");
    }
}
