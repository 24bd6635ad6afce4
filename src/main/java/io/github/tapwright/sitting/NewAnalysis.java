package io.github.tapwright.sitting;

import java.time.Instant;

/**
 * An analysis about to be kept.
 *
 * @param madeAt when it was made
 * @param findings what was found
 */
public record NewAnalysis(Instant madeAt, Findings findings) {}
