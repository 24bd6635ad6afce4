package io.github.tapwright.comparison.played;

import io.github.tapwright.statistics.Estimate;
import java.util.Optional;

/**
 * One string in both sittings.
 *
 * @param string which, 1 the highest
 * @param firstCount how many notes or plucks of the first sitting went in
 * @param secondCount how many of the second; the same number for notes, which are compared place by place
 * @param first their mean in the first sitting: seconds, dB or LUFS
 * @param second their mean in the second
 * @param difference second less first on the scale of comparison; empty where nothing tells how far it scatters
 */
public record OnString(
        int string, int firstCount, int secondCount, double first, double second, Optional<Estimate> difference) {}
