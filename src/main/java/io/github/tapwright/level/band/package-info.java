/**
 * Levels in octave and third-octave bands.
 *
 * <p>Bands are named by their nominal mid-band frequency ("31.5 Hz") and computed at the exact one (31.623 Hz),
 * powers of ten to the base 10. A recording only has the bands that end below half its sample rate.
 */
@NullMarked
package io.github.tapwright.level.band;

import org.jspecify.annotations.NullMarked;
