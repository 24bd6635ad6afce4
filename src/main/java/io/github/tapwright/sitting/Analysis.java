package io.github.tapwright.sitting;

import io.github.tapwright.mode.TapResult;
import java.time.Instant;
import java.util.Optional;

/**
 * What one version of the method, with one choice of settings, found in a sitting's recordings.
 *
 * @param number from 1 in the order they were made
 * @param madeAt when
 * @param findings what was found, with settings and method version
 */
public record Analysis(int number, Instant madeAt, Findings findings) {

    /**
     * The body's resonances.
     *
     * @return empty if something else was measured
     */
    public Optional<TapResult> taps() {
        return findings.taps();
    }

    /**
     * Which method made these numbers.
     *
     * @return its name and version
     */
    public String methodVersion() {
        return findings.methodVersion();
    }
}
