package io.github.tapwright.sitting;

import io.github.tapwright.mode.TapResult;
import java.time.Instant;

/**
 * What one version of the method, with one choice of settings, found in a sitting's recordings.
 *
 * @param number from 1 in the order they were made
 * @param madeAt when
 * @param result what was found, with settings and method version
 */
public record Analysis(int number, Instant madeAt, TapResult result) {}
