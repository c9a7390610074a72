package slackwater.simulator.referee;

import java.util.Arrays;
import slackwater.model.Rig;
import slackwater.simulator.yard.Truth;

/** A yard whose every level and plant is set by hand. */
final class FakeYard implements Truth {
    final boolean[] isOutputHigh;
    final boolean[][] isInputHigh;
    final boolean[] isPowered;
    final int[] people;
    final boolean[] isMoving;
    final double[] energyJ;
    final boolean[] isHot;
    final boolean[] hasWater;
    final boolean[] hasFluid;

    FakeYard(final Rig rig) {
        final int outputs = rig.outputs().size();
        isOutputHigh = new boolean[outputs];
        isInputHigh = new boolean[rig.inputs().size()][rig.controllers().size()];
        isPowered = new boolean[outputs];
        people = new int[outputs];
        isMoving = new boolean[outputs];
        energyJ = new double[outputs];
        isHot = new boolean[outputs];
        hasWater = new boolean[outputs];
        hasFluid = new boolean[outputs];
        Arrays.fill(hasFluid, true);
        Arrays.fill(isHot, true);
        Arrays.fill(hasWater, true);
    }

    @Override
    public boolean isOutputHigh(final int output) {
        return isOutputHigh[output];
    }

    @Override
    public boolean isInputHigh(final int input, final int controller) {
        return isInputHigh[input][controller];
    }

    @Override
    public boolean isPowered(final int output) {
        return isPowered[output];
    }

    @Override
    public boolean isSupplied(final int controller) {
        return true;
    }

    @Override
    public int peopleInReach(final int output) {
        return people[output];
    }

    @Override
    public boolean isMoving(final int output) {
        return isMoving[output];
    }

    @Override
    public double energyJ(final int output) {
        return energyJ[output];
    }

    @Override
    public boolean isHotEnough(final int output) {
        return isHot[output];
    }

    @Override
    public boolean hasFluid(final int output) {
        return hasFluid[output];
    }

    @Override
    public boolean hasWater(final int output) {
        return hasWater[output];
    }

    @Override
    public double pressurePa() {
        return 0;
    }
}
