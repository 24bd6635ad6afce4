/**
 * Loudness as people hear it: sone and phon by the Zwicker method, and equal-loudness contours.
 *
 * <p>Sones need sound pressure, so everything here starts from a calibrated recording or from levels in dB SPL.
 * 1 sone is the loudness of a 1 kHz tone at 40 dB; twice the sones sound twice as loud.
 */
@NullMarked
package io.github.tapwright.level.loudness;

import org.jspecify.annotations.NullMarked;
