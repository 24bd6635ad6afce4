/**
 * The plain tools of signal analysis: Fourier transforms, windows, recursive filters, changes of rate,
 * linear prediction.
 *
 * <p>Everything is numbers in, numbers out. Lengths and scalings are stated where they matter; nothing is
 * padded or resampled behind the caller's back.
 */
@NullMarked
package io.github.tapwright.signal;

import org.jspecify.annotations.NullMarked;
