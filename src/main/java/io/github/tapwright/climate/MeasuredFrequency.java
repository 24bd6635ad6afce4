package io.github.tapwright.climate;

/**
 * A resonance as it was measured.
 *
 * @param frequencyHz positive
 * @param standardUncertaintyHz not negative
 */
public record MeasuredFrequency(double frequencyHz, double standardUncertaintyHz) {

    /** Refuses what is no frequency. */
    public MeasuredFrequency {
        if (!(frequencyHz > 0 && frequencyHz < Double.POSITIVE_INFINITY)
                || !(standardUncertaintyHz >= 0 && standardUncertaintyHz < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a frequency above zero with its uncertainty is needed, got "
                    + frequencyHz + " Hz ± " + standardUncertaintyHz + " Hz");
        }
    }

    double relativeUncertainty() {
        return standardUncertaintyHz / frequencyHz;
    }
}
