package io.github.tapwright.chart;

/**
 * The light a picture is looked at in.
 *
 * <p>Pictures are drawn once, in ink on white paper. In the dark every pixel keeps its hue and turns its lightness
 * about: with m the greatest and n the least of red, green and blue (0 to 255), each becomes c + 255 − m − n, which
 * leaves hue and chroma of the HSL colour model as they are. So colours that readers can tell apart stay apart, and no
 * picture needs a second set of colours.
 */
public enum Light {
    /** Ink on white paper. */
    DAY,
    /** Light ink on dark paper. */
    NIGHT;

    /** Pure black around a bright line tires the eye; this is the darkest grey instead. */
    private static final int DARKEST = 0x16;

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
        int shift =
                255 - Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
        return lifted(red + shift) << 16 | lifted(green + shift) << 8 | lifted(blue + shift);
    }

    private static int lifted(int value) {
        return DARKEST + value * (255 - DARKEST) / 255;
    }
}
