package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import org.junit.jupiter.api.Test;

class LightTest {

    private static Color at(Light light, Color colour) {
        int[] pixels = {colour.getRGB() & 0xFFFFFF};
        light.apply(pixels);
        return new Color(pixels[0], true);
    }

    @Test
    void byDayNothingChangesButThatPixelsAreOpaque() {
        assertThat(at(Light.DAY, new Color(1, 2, 3))).isEqualTo(new Color(1, 2, 3));
    }

    @Test
    void byNightPaperIsDarkAndInkIsLight() {
        assertThat(at(Light.NIGHT, Look.PAPER)).isEqualTo(new Color(0x16, 0x16, 0x16));
        assertThat(luminance(at(Light.NIGHT, Look.INK))).isGreaterThan(0.6);
    }

    /** WCAG 2.1, 1.4.11: what carries meaning in a picture stands out from its ground at 3:1 at least. */
    @Test
    void byNightEveryCurveStandsOutFromThePaper() {
        double paper = luminance(at(Light.NIGHT, Look.PAPER));
        for (int trace = 0; trace < 5; trace++) {
            double line = luminance(at(Light.NIGHT, Look.colour(trace)));
            assertThat((line + 0.05) / (paper + 0.05)).as("curve %d", trace).isGreaterThan(3);
        }
    }

    /** Relative luminance by WCAG 2.1. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
