package slackwater.simulator.visitor;

import java.util.List;

/** Who walks where in a group: side by side as far as the way is wide enough, the others behind. */
final class Ranks {
    /** From one person's middle to the next; elbows just do not touch (common practice, no source). */
    static final double SIDE_BY_SIDE_M = 0.75;

    /** From one rank to the next (common practice, no source). */
    static final double RANK_TO_RANK_M = 1.0;

    /** What a person keeps from the way's edge: half a shoulder's width (common practice, no source). */
    static final double FROM_EDGE_M = 0.25;

    private static final double DOG_BESIDE_M = 0.4;

    private final double[] toLeftM;
    private final double[] behindM;

    private Ranks(final double[] toLeftM, final double[] behindM) {
        this.toLeftM = toLeftM;
        this.behindM = behindM;
    }

    static Ranks of(final List<Being> beings, final double wayWidthM, final Chance places) {
        final double usableM = StrictMath.max(0, wayWidthM - 2 * FROM_EDGE_M);
        final int people =
                (int) beings.stream().filter(being -> being != Being.DOG).count();
        final int abreast = StrictMath.min(people, 1 + (int) (usableM / SIDE_BY_SIDE_M));
        final double freeM = StrictMath.max(0, usableM - (abreast - 1) * SIDE_BY_SIDE_M);
        final double middleM = places.between(-freeM / 2, freeM / 2);
        final double[] toLeftM = new double[beings.size()];
        final double[] behindM = new double[beings.size()];
        for (int i = 0; i < people; i++) {
            final int rank = i / abreast;
            final int inRank = StrictMath.min(abreast, people - rank * abreast);
            toLeftM[i] = middleM + (i % abreast - (inRank - 1) / 2.0) * SIDE_BY_SIDE_M;
            behindM[i] = rank * RANK_TO_RANK_M;
        }
        for (int i = people; i < beings.size(); i++) {
            toLeftM[i] = besideFirst(toLeftM[0], usableM / 2);
            behindM[i] = behindM[0];
        }
        return new Ranks(toLeftM, behindM);
    }

    /** A dog walks on its person's side towards the middle of the way, and not off the way. */
    private static double besideFirst(final double personM, final double edgeM) {
        final double besideM = personM > 0 ? personM - DOG_BESIDE_M : personM + DOG_BESIDE_M;
        return StrictMath.max(-edgeM, StrictMath.min(edgeM, besideM));
    }

    double toLeftM(final int member) {
        return toLeftM[member];
    }

    double behindM(final int member) {
        return behindM[member];
    }

    /** How far the last rank is behind the first. */
    double depthM() {
        double depthM = 0;
        for (final double each : behindM) {
            depthM = StrictMath.max(depthM, each);
        }
        return depthM;
    }
}
