package io.github.tapwright.chart;

/**
 * The light a picture is looked at in.
 *
 * <p>Pictures are drawn once, in ink on white paper. In the dark every pixel keeps hue and chroma of the HSL colour model
 * and turns its lightness L about, L' = (1 − L)^0.7; the power lifts the middle, where the lines lie, off the dark paper.
 * With m the greatest and n the least of red, green and blue (0 to 255), L = (m + n)/510, and every one of the three moves
 * by 255·(L' − L), cut at 0 and 255. So colours that readers can tell apart stay apart, and no picture needs a second set
 * of colours.
 */
public enum Light {
    /** Ink on white paper. */
    DAY,
    /** Light ink on dark paper. */
    NIGHT;

    /** Pure black around a bright line tires the eye; this is the darkest grey instead. */
    private static final int DARKEST = 0x16;

    private static final double LIFT = 0.7;

    /** How far a pixel moves, by the sum of its greatest and least colour. */
    private static final int[] SHIFTS = shifts();

    private static final int OPAQUE = 0xFF000000;

    /** Changes pixels 0xRRGGBB in place and makes them opaque. */
    void apply(int[] pixels) {
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = OPAQUE | (this == DAY ? pixels[i] : turned(pixels[i]));
        }
    }

    private static int turned(int rgb) {
        int red = rgb >> 16 & 0xFF;
        int green = rgb >> 8 & 0xFF;
        int blue = rgb & 0xFF;
        int shift = SHIFTS[Math.max(red, Math.max(green, blue)) + Math.min(red, Math.min(green, blue))];
        return lifted(red + shift) << 16 | lifted(green + shift) << 8 | lifted(blue + shift);
    }

    private static int[] shifts() {
        int[] shifts = new int[511];
        for (int sum = 0; sum < shifts.length; sum++) {
            double lightness = sum / 510.0;
            shifts[sum] = (int) Math.round(255 * (Math.pow(1 - lightness, LIFT) - lightness));
        }
        return shifts;
    }

    private static int lifted(int value) {
        return DARKEST + Math.max(0, Math.min(255, value)) * (255 - DARKEST) / 255;
    }
}
