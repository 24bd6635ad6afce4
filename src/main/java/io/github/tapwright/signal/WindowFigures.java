package io.github.tapwright.signal;

/**
 * What a window does to lines and noise; one bin is 1/T for a stretch of T seconds.
 *
 * <p>With W(k) = Σ w[n]·exp(−2πi·k·n/N), k any real number of bins. Source: the definitions of [Harris1978],
 * sec. IV; widths are taken at exactly 1/√2 and 1/2 of the top, 3.01 and 6.02 dB down.
 *
 * @param coherentGain W(0)/N: what the window multiplies a steady tone's amplitude by
 * @param noiseBandwidthBins N·Σw²/(Σw)²: width of a rectangular filter that lets as much white noise through
 * @param scallopingLossDb largest error of a tone's level anywhere between two bins. For all but a flat top that
 *     is the loss half-way, 20·lg(W(0)/W(½)); for a flat top it is its ripple, in either direction
 * @param highestSidelobeDb highest side lobe re the main lobe, less than 0
 * @param halfPowerWidthBins full width of the main lobe at half power
 * @param halfAmplitudeWidthBins full width at half amplitude: equal tones closer than this melt into one
 * @param overlapCorrelation50 how alike the noise of two stretches is that overlap by half, Σ w[n]·w[n+N/2]/Σw²
 * @param overlapCorrelation75 the same for an overlap of three quarters, Σ w[n]·w[n+N/4]/Σw²
 */
public record WindowFigures(
        double coherentGain,
        double noiseBandwidthBins,
        double scallopingLossDb,
        double highestSidelobeDb,
        double halfPowerWidthBins,
        double halfAmplitudeWidthBins,
        double overlapCorrelation50,
        double overlapCorrelation75) {

    /**
     * Measures a window.
     *
     * @param samples periodic samples, not changed; length a multiple of 4, at least 64
     * @return its figures
     */
    public static WindowFigures of(double[] samples) {
        int length = samples.length;
        if (length < 64 || length % 4 != 0) {
            throw new IllegalArgumentException("figures need a multiple of 4 samples, 64 at least, had " + length);
        }
        double sum = 0;
        for (double w : samples) {
            sum += w;
        }
        double energy = overlap(samples, 0);
        WindowSpectrum spectrum = new WindowSpectrum(samples);
        return new WindowFigures(
                sum / length,
                length * energy / (sum * sum),
                spectrum.largestErrorDb(),
                spectrum.highestSidelobeDb(),
                spectrum.widthBins(Math.sqrt(0.5)),
                spectrum.widthBins(0.5),
                overlap(samples, length / 2) / energy,
                overlap(samples, length / 4) / energy);
    }

    private static double overlap(double[] samples, int shift) {
        double sum = 0;
        for (int n = 0; n + shift < samples.length; n++) {
            sum += samples[n] * samples[n + shift];
        }
        return sum;
    }

    /**
     * Worst-case processing loss: how much harder a tone between two bins is to find in white noise than one on
     * a bin without a window, scalloping loss + 10·lg(noise bandwidth).
     *
     * @return dB, greater than 0
     */
    public double worstCaseLossDb() {
        return scallopingLossDb + 10 * Math.log10(noiseBandwidthBins);
    }
}
