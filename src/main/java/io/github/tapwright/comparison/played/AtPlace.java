package io.github.tapwright.comparison.played;

import io.github.tapwright.note.run.Fret;

/**
 * One figure of the notes at one place in both runs.
 *
 * @param place string and fret
 * @param first in the first run: seconds, dB, or cents off the fret
 * @param second in the second run
 * @param difference second less first in the unit of differences: per cent of the first, dB, cents
 */
public record AtPlace(Fret place, double first, double second, double difference) {}
