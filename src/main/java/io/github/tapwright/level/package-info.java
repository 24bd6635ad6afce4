/**
 * How loud a recording is: weighted sound levels, levels in bands, programme loudness and loudness as heard.
 *
 * <p>A level always carries what it is measured against: full scale, or 20 µPa through a calibration made
 * from a recorded calibrator tone. {@link io.github.tapwright.level.LevelAnalysis} reads a recording once and
 * gives everything; the parts can be used alone.
 */
@NullMarked
package io.github.tapwright.level;

import org.jspecify.annotations.NullMarked;
