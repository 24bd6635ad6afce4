package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.LongSummaryStatistics;

/**
 * What else than setting up again may be in the figures of a study: chance, and whatever time and air did to the wood in between. The
 * limits, two days and the five points of humidity of {@link AirConditions}, are common practice, no source.
 */
public final class StudyDoubts {

    private static final Duration SOON = Duration.ofDays(2);

    private StudyDoubts() {}

    /**
     * Looks for doubts.
     *
     * @param studied the sittings a study rests on, one at least
     * @return a sentence for each; none if all is well
     */
    public static List<String> of(List<SittingOutline> studied) {
        List<String> doubts = new ArrayList<>();
        if (studied.size() < BenchStudy.ENOUGH) {
            String called = studied.get(0).procedure().equals(Procedure.BodyTaps.KEY) ? "set-ups" : "sittings";
            doubts.add("Fewer than " + BenchStudy.ENOUGH + " " + called + ": its figures are themselves uncertain.");
        }
        LongSummaryStatistics taken = studied.stream()
                .map(s -> s.takenAt().instant())
                .mapToLong(Instant::getEpochSecond)
                .summaryStatistics();
        Duration apart = Duration.ofSeconds(taken.getMax() - taken.getMin());
        if (apart.compareTo(SOON) > 0) {
            doubts.add("First and last lie " + apart.toDays()
                    + " days apart: what the instrument did meanwhile counts as setting up again, so that real changes may go unseen."
                    + " Make a study within a day.");
        }
        DoubleSummaryStatistics humidity = studied.stream()
                .flatMap(s -> s.conditions().air().relativeHumidityPercent().stream())
                .mapToDouble(rh -> rh)
                .summaryStatistics();
        if (humidity.getMax() - humidity.getMin() > AirConditions.FAR_APART_PERCENT) {
            doubts.add("The air was between " + Figures.plain(humidity.getMin()) + " and "
                    + Figures.plain(humidity.getMax())
                    + " % relative humidity: what that did to the wood counts as setting up again.");
        }
        return doubts;
    }
}
