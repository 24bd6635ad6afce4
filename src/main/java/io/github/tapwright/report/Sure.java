package io.github.tapwright.report;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;

/** Figures for people who do not know what a standard uncertainty is. */
final class Sure {

    private Sure() {}

    /** Value ± half the 95 % interval, two digits of it at most and no finer than the place asked for. */
    static String text(Estimate estimate, int finest) {
        return Figures.text(
                new Estimate(estimate.value(), estimate.halfWidth95(), estimate.degreesOfFreedom()), finest);
    }
}
