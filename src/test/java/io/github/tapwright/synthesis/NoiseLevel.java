package io.github.tapwright.synthesis;

/**
 * How a scene's signal-to-noise ratio is meant.
 *
 * <p>Always 20·lg of the rms of the first 100 ms after the contact of the median strike (by strength, faulty
 * strikes left out) over the rms of the room's noise; the two differ in what is counted.
 */
public enum NoiseLevel {
    /** Both within 60 to 1,000 Hz, where a body's separate resonances lie. */
    BODY_BAND {
        @Override
        double rms(double[] samples, double rateHz) {
            return Levels.bandRms(samples, rateHz, 60, 1000);
        }
    },
    /** Both over everything the sample rate can hold. */
    FULL_BAND {
        @Override
        double rms(double[] samples, double rateHz) {
            return Levels.rms(samples);
        }
    };

    abstract double rms(double[] samples, double rateHz);
}
