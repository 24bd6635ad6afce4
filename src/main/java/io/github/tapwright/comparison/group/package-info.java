/**
 * Instruments of one construction against those of another: does the archive show a difference that is more than chance?
 *
 * <p>What counts is the number of instruments, not of taps or sittings: each instrument is the mean over its sittings and weighs the
 * same. Two instruments of a kind can differ by more than two kinds do, so groups of fewer than three claim nothing.
 */
@NullMarked
package io.github.tapwright.comparison.group;

import org.jspecify.annotations.NullMarked;
