package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import java.util.List;
import java.util.Optional;

/**
 * One quantity over time.
 *
 * @param subject which
 * @param figures one for each sitting that has it, oldest first
 * @param inStretch how many of the last ones lie in the stretch a drift is sought in
 * @param daysInStretch on how many days these were taken
 * @param drift what was found there; empty with figures of fewer than {@link Drift#FEWEST} days
 */
public record Series(
        Subject subject, List<SittingFigure> figures, int inStretch, int daysInStretch, Optional<Drift> drift) {

    /** Keeps a copy of the list. */
    public Series {
        figures = List.copyOf(figures);
    }

    /**
     * The figures a drift is sought in.
     *
     * @return the last ones
     */
    public List<SittingFigure> stretch() {
        return figures.subList(figures.size() - inStretch, figures.size());
    }

    Series adjusted(double probability) {
        return new Series(subject, figures, inStretch, daysInStretch, drift.map(d -> d.adjusted(probability)));
    }
}
