/**
 * Samples and what they mean: a sample rate, channels, and the way sound reaches an analysis.
 *
 * <p>A sample is a plain number between −1 and +1, where 1 is the largest value the file's format can
 * hold ("full scale"). Nothing here knows about files, microphones or clocks: sound arrives as a
 * {@link io.github.tapwright.recording.SampleStream}, block by block and in order, so that a ten-minute
 * recording needs no more memory than a ten-second one.
 */
@NullMarked
package io.github.tapwright.recording;

import org.jspecify.annotations.NullMarked;
