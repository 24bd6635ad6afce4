package io.github.tapwright.desktop.notes;

import io.github.tapwright.chart.Light;

/**
 * The shade of a cell: one hue from faint to strong, so that no kind of colour vision is needed, and letters in black or
 * white, whichever stands out more. Contrast by relative luminance: L = 0.2126 R + 0.7152 G + 0.0722 B of linear light,
 * (L1 + 0.05)/(L2 + 0.05). Source: [WCAG22].
 *
 * @param background as "#rrggbb"
 * @param letters as "#rrggbb"
 */
public record Shade(String background, String letters) {

    private static final int[] DAY_FAINT = {0xEE, 0xF4, 0xFA};
    private static final int[] DAY_STRONG = {0x0B, 0x3C, 0x6F};
    private static final int[] NIGHT_FAINT = {0x14, 0x24, 0x36};
    private static final int[] NIGHT_STRONG = {0x9C, 0xCF, 0xFF};
    private static final String BLACK = "#000000";
    private static final String WHITE = "#ffffff";

    /**
     * The shade of a share: by day darker is more, by night brighter is more.
     *
     * @param share 0 to 1
     * @param light day or night
     * @return the shade
     */
    public static Shade of(double share, Light light) {
        int[] faint = light == Light.DAY ? DAY_FAINT : NIGHT_FAINT;
        int[] strong = light == Light.DAY ? DAY_STRONG : NIGHT_STRONG;
        double at = Math.max(0, Math.min(1, share));
        int[] mixed = new int[3];
        for (int c = 0; c < 3; c++) {
            mixed[c] = (int) Math.round(faint[c] + at * (strong[c] - faint[c]));
        }
        double luminance = luminance(mixed);
        boolean black = (luminance + 0.05) / 0.05 >= 1.05 / (luminance + 0.05);
        return new Shade(String.format("#%02x%02x%02x", mixed[0], mixed[1], mixed[2]), black ? BLACK : WHITE);
    }

    /**
     * Contrast between letters and background.
     *
     * @return 1 (none) to 21
     */
    public double contrast() {
        double a = luminance(parsed(background));
        double b = luminance(parsed(letters));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static int[] parsed(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return new int[] {rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF};
    }

    private static double luminance(int[] rgb) {
        return 0.2126 * linear(rgb[0]) + 0.7152 * linear(rgb[1]) + 0.0722 * linear(rgb[2]);
    }

    private static double linear(int value) {
        double v = value / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }
}
