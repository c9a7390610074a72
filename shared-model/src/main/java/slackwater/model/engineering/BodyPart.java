package slackwater.model.engineering;

/**
 * What ISO 10218-2:2025 Annex A (figures of ISO/TS 15066:2016, Table A.2) lets a robot press a healthy adult worker
 * with: see {@link ContactLimits} for what that is not. Head, face and neck are left out on purpose: no contact with
 * them may be planned. Some stiffnesses are from memory, as marked.
 */
public enum BodyPart {
    BACK_AND_SHOULDERS(210, 35_000),
    CHEST(140, 25_000),
    ABDOMEN(110, 10_000),
    /** Stiffness from memory. */
    PELVIS(180, 25_000),
    /** Stiffness from memory. */
    UPPER_ARM_AND_ELBOW(150, 30_000),
    /** Stiffness from memory. */
    FOREARM_AND_WRIST(160, 40_000),
    /** Stiffness from memory. */
    HAND_AND_FINGERS(140, 75_000);

    private static final double TRANSIENT_FACTOR = 2;

    private final double pressedN;
    private final double stiffnessNPerM;

    BodyPart(final double pressedN, final double stiffnessNPerM) {
        this.pressedN = pressedN;
        this.stiffnessNPerM = stiffnessNPerM;
    }

    /** Quasi-static limit, N: pressed against something (handbook 1.11 cases 1 to 7). */
    public double pressedN() {
        return pressedN;
    }

    /** Transient limit, N: struck and free to give way, twice the other. */
    public double struckN() {
        return TRANSIENT_FACTOR * pressedN;
    }

    /** Effective spring of the part, N/m. */
    public double stiffnessNPerM() {
        return stiffnessNPerM;
    }

    /** Energy at which a blow reaches the transient limit, J: F^2 / (2 k) (handbook 1.11 case 8). */
    public double struckJ() {
        return struckN() * struckN() / (2 * stiffnessNPerM);
    }

    /**
     * Closing speed at which a blow reaches the transient limit, m/s: F / sqrt(mu k) (handbook 1.11 case 9).
     *
     * @param movingKg effective mass of what moves, kg, above 0
     * @param bodyKg effective mass of the body part, kg, above 0; 40 for the chest
     */
    public double struckMPerS(final double movingKg, final double bodyKg) {
        Given.positive("movingKg", movingKg);
        Given.positive("bodyKg", bodyKg);
        final double sharedKg = movingKg * bodyKg / (movingKg + bodyKg);
        return struckN() / StrictMath.sqrt(sharedKg * stiffnessNPerM);
    }
}
