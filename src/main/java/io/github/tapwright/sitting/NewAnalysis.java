package io.github.tapwright.sitting;

import io.github.tapwright.mode.TapResult;
import java.time.Instant;

/**
 * An analysis about to be kept.
 *
 * @param madeAt when it was made
 * @param result what was found
 */
public record NewAnalysis(Instant madeAt, TapResult result) {}
