package io.github.tapwright.recording;

/**
 * How many samples a second a recording holds.
 *
 * @param hertz samples per second, finite and greater than zero
 */
public record SampleRate(double hertz) {

    /** Refuses rates that are not positive, finite numbers. */
    public SampleRate {
        if (!(hertz > 0) || Double.isInfinite(hertz)) {
            throw new IllegalArgumentException("sample rate must be positive and finite, was " + hertz + " Hz");
        }
    }

    /**
     * Time of a sample counted from the start of the recording: n / rate.
     *
     * @param samples number of samples
     * @return seconds
     */
    public double seconds(long samples) {
        return samples / hertz;
    }
}
