package io.github.tapwright.level.band;

import io.github.tapwright.signal.SecondOrderSection;
import java.util.ArrayList;
import java.util.List;

/**
 * Butterworth band-pass filters of order 8 for the bands, at any sample rate.
 *
 * <p>A low-pass prototype of order 4, poles p = exp(iπ(2k+5)/8), is moved to the band by
 * s² − p·B·s + Ω0² = 0 and to the z plane by z = (1+s)/(1−s), both edges prewarped to tan(π·f/rate). Order 8
 * keeps class 1 even for the third-octave band of 20 kHz at 48 kHz, where order 6 no longer does. Sources:
 * limits [IEC61260-1], table 1; design [OppenheimSchafer2010], ch. 7 and appendix B.
 */
final class BandDesign {

    private static final int PROTOTYPE_ORDER = 4;

    private BandDesign() {}

    static List<SecondOrderSection> sections(Band band, double rateHz) {
        double low = Math.tan(Math.PI * band.lowerHz() / rateHz);
        double high = Math.tan(Math.PI * band.upperHz() / rateHz);
        double middle = Math.sqrt(low * high);
        double middleHz = Math.atan(middle) * rateHz / Math.PI;
        List<SecondOrderSection> sections = new ArrayList<>();
        for (int k = 0; k < PROTOTYPE_ORDER / 2; k++) {
            double angle = Math.PI * (2 * k + PROTOTYPE_ORDER + 1) / (2 * PROTOTYPE_ORDER);
            // half the prototype pole, scaled to the bandwidth
            double re = Math.cos(angle) * (high - low) / 2;
            double im = Math.sin(angle) * (high - low) / 2;
            // the square root of (pB/2)² − Ω0²
            double re2 = re * re - im * im - middle * middle;
            double im2 = 2 * re * im;
            double size = Math.sqrt((Math.hypot(re2, im2) + Math.abs(re2)) / 2);
            double rootRe = re2 >= 0 ? size : im2 / (2 * size);
            double rootIm = re2 >= 0 ? im2 / (2 * size) : size;
            sections.add(section(re + rootRe, im + rootIm, middleHz, rateHz));
            sections.add(section(re - rootRe, im - rootIm, middleHz, rateHz));
        }
        return sections;
    }

    /** The section of the analogue pole pair re ± i·im, its gain 1 in the middle of the band. */
    private static SecondOrderSection section(double re, double im, double middleHz, double rateHz) {
        double size = re * re + im * im;
        double a0 = 1 - 2 * re + size;
        SecondOrderSection section = new SecondOrderSection(1, 0, -1, 2 * (size - 1) / a0, (1 + 2 * re + size) / a0);
        return section.times(1 / Math.sqrt(section.powerGain(middleHz, rateHz)));
    }
}
