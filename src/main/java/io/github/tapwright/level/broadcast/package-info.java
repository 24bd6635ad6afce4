/**
 * Programme loudness as broadcasters measure it: LUFS, loudness range and true peak.
 *
 * <p>Needs no calibration: everything is against full scale, so it compares recordings by ear-like weighting
 * even where the microphone's sensitivity is unknown. Sources: [BS1770], [EBU3341], [EBU3342].
 */
@NullMarked
package io.github.tapwright.level.broadcast;

import org.jspecify.annotations.NullMarked;
