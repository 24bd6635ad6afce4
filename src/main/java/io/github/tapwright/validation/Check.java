package io.github.tapwright.validation;

import java.util.Optional;
import java.util.function.DoubleSupplier;

/**
 * One number the program must get right.
 *
 * @param quantity what it is
 * @param expected what it should be
 * @param unit of both; empty for a bare number
 * @param source where the expected number comes from: keys of docs/references.bib, "derived", "common practice, no source"
 * @param tolerance how far off it may be, and why
 * @param computation works it out with the shipped code
 */
public record Check(
        String quantity, double expected, String unit, String source, Tolerance tolerance, DoubleSupplier computation) {

    /** Refuses a check that does not say where its number comes from. */
    public Check {
        if (source.isBlank() || quantity.isBlank() || !Double.isFinite(expected)) {
            throw new IllegalArgumentException("a check names its quantity, a finite number and its source");
        }
    }

    /**
     * Works the number out.
     *
     * @return what came of it; a computation that fails is a number that was not got
     */
    public Outcome run() {
        try {
            double got = computation.getAsDouble();
            return new Outcome(this, Optional.of(got), "");
        } catch (RuntimeException e) {
            // Whatever goes wrong, the book goes on and says so: one broken check must not hide the others.
            return new Outcome(this, Optional.empty(), String.valueOf(e.getMessage()));
        }
    }
}
