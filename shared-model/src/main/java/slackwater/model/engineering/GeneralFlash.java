package slackwater.model.engineering;

/**
 * What counts as a flash, and from which area on (handbook 4.1 and 4.4, WCAG 2.x success criterion 2.3.1 and its glossary). The
 * criterion is one for screens: at night a strobe lights the whole yard, so the area is taken as exceeded and the rate alone
 * decides; see {@link FlashCount}.
 */
public final class GeneralFlash {
    /** Least change, as a share of the greatest relative luminance (4.1 case 2). */
    public static final double LEAST_STEP = 0.10;
    /** The darker state of a flash is below this relative luminance (4.1 case 3). */
    public static final double DARKER_BELOW = 0.80;
    /** Flashes that fill less than this at once are let pass, steradian: 25 % of any 10 degrees of sight (4.1 case 4). */
    public static final double AREA_SR = 0.006;
    /** The share of a field of sight that {@link #AREA_SR} stands for, with a field of 10 degrees (4.1 cases 4 and 5). */
    public static final double FIELD_SHARE = 0.25;
    /** Least share of red in a saturated red (4.1 case 6, working definition of WCAG 2.2). */
    public static final double SATURATED_RED_SHARE = 0.8;
    /** Least step in broadcasting, cd/m2 (4.2 case 4, ITU-R BT.1702; from memory, not looked up). */
    public static final double BROADCAST_STEP_CD_PER_M2 = 20;
    /** The darker image of a flash in broadcasting is below this, cd/m2 (4.2 case 4; from memory, not looked up). */
    public static final double BROADCAST_DARKER_BELOW_CD_PER_M2 = 160;

    /** Far below any step that an eye or a camera tells apart, and above what the arithmetic of a double adds. */
    private static final double ROUNDING = 1e-9;

    private static final int BRIGHTEST = 255;
    private static final double RED_SHARE = 0.2126;
    private static final double GREEN_SHARE = 0.7152;
    private static final double BLUE_SHARE = 0.0722;

    private GeneralFlash() {}

    /**
     * Whether going from one luminance to the other and back is a general flash.
     *
     * @param oneLuminance relative, 0 (black) to 1 (the brightest white)
     * @param otherLuminance relative, 0 to 1
     */
    public static boolean isFlash(final double oneLuminance, final double otherLuminance) {
        Given.within("oneLuminance", oneLuminance, 0, 1);
        Given.within("otherLuminance", otherLuminance, 0, 1);
        return steps(oneLuminance, otherLuminance, LEAST_STEP, DARKER_BELOW);
    }

    /** As {@link #isFlash} in broadcasting, from luminances of the picture in cd/m2. */
    public static boolean isBroadcastFlash(final double oneCdPerM2, final double otherCdPerM2) {
        Given.notNegative("oneCdPerM2", oneCdPerM2);
        Given.notNegative("otherCdPerM2", otherCdPerM2);
        return steps(oneCdPerM2, otherCdPerM2, BROADCAST_STEP_CD_PER_M2, BROADCAST_DARKER_BELOW_CD_PER_M2);
    }

    /**
     * Relative luminance of an sRGB colour (4.1 cases 9 and 10; IEC 61966-2-1, from memory).
     *
     * @param red 0 to 255, as green and blue
     */
    public static double relativeLuminance(final int red, final int green, final int blue) {
        return RED_SHARE * linear(red, "red")
                + GREEN_SHARE * linear(green, "green")
                + BLUE_SHARE * linear(blue, "blue");
    }

    /** Whether an sRGB colour, 0 to 255 each, is so red that its flashes count as red flashes; black is not. */
    public static boolean isSaturatedRed(final int red, final int green, final int blue) {
        final double linearRed = linear(red, "red");
        final double sum = linearRed + linear(green, "green") + linear(blue, "blue");
        return sum > 0 && linearRed >= SATURATED_RED_SHARE * sum;
    }

    /**
     * Solid angle of a round field of sight, steradian (4.1 case 5).
     *
     * @param acrossDeg its whole opening, above 0 to 360 degrees
     */
    public static double fieldSr(final double acrossDeg) {
        Given.positive("acrossDeg", acrossDeg);
        Given.within("acrossDeg", acrossDeg, 0, 360);
        return 2 * Math.PI * (1 - StrictMath.cos(StrictMath.toRadians(acrossDeg / 2)));
    }

    /** The luminous area that fills {@link #AREA_SR} when seen square from a distance, m2 (4.1 cases 7 and 8). */
    public static double areaM2(final double distanceM) {
        Given.positive("distanceM", distanceM);
        return AREA_SR * distanceM * distanceM;
    }

    private static boolean steps(final double one, final double other, final double step, final double darkerBelow) {
        return Math.abs(one - other) >= step - ROUNDING && Math.min(one, other) < darkerBelow - ROUNDING;
    }

    private static double linear(final int value, final String name) {
        final double share = Given.within(name, value, 0, BRIGHTEST) / BRIGHTEST;
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }
}
