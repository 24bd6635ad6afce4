package io.github.tapwright.tap;

import java.util.List;

/**
 * The free decays of the used strikes, cut to one length, each starting when its contact was over.
 */
public final class Decays {

    private final double rateHz;
    private final double[][] samples;
    private final List<Double> humHz;

    /**
     * Decays of one length.
     *
     * @param rateHz samples per second
     * @param samples shape [strike][sample], at least one strike
     * @param humHz steady tones of the mains found in the recordings, Hz
     */
    public Decays(double rateHz, double[][] samples, List<Double> humHz) {
        if (samples.length == 0) {
            throw new IllegalArgumentException("no decay, nothing to analyse");
        }
        this.rateHz = rateHz;
        this.samples = new double[samples.length][];
        for (int s = 0; s < samples.length; s++) {
            if (samples[s].length != samples[0].length) {
                throw new IllegalArgumentException("all decays must have one length");
            }
            this.samples[s] = samples[s].clone();
        }
        this.humHz = List.copyOf(humHz);
    }

    /**
     * Samples per second.
     *
     * @return Hz
     */
    public double rateHz() {
        return rateHz;
    }

    /**
     * How many strikes.
     *
     * @return at least 1
     */
    public int count() {
        return samples.length;
    }

    /**
     * Samples in each decay.
     *
     * @return N
     */
    public int length() {
        return samples[0].length;
    }

    /**
     * Length of each decay.
     *
     * @return seconds
     */
    public double seconds() {
        return length() / rateHz;
    }

    /**
     * One decay.
     *
     * @param strike from 0
     * @return a copy, shape [N]
     */
    public double[] decay(int strike) {
        return samples[strike].clone();
    }

    /**
     * Steady mains tones to be taken out of the fit.
     *
     * @return frequencies, Hz
     */
    public List<Double> humHz() {
        return humHz;
    }
}
