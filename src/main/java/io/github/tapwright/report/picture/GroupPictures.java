package io.github.tapwright.report.picture;

import io.github.tapwright.chart.GroupPicture;
import io.github.tapwright.chart.PointsPicture;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.group.GroupCurve;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.List;
import java.util.Optional;

/** From groups of instruments to a picture of their mean responses. */
public final class GroupPictures {

    private GroupPictures() {}

    /**
     * The mean response of each group.
     *
     * @param study groups against each other
     * @return empty if there is no curve to draw
     */
    public static Optional<GroupPicture> of(GroupStudy study) {
        List<GroupPicture.Curve> curves = study.curves().stream()
                .filter(c -> !c.bands().isEmpty())
                .map(GroupPictures::curve)
                .toList();
        if (curves.isEmpty()) {
            return Optional.empty();
        }
        List<String> subtitles = List.of(
                "sittings " + study.settings().stage().words()
                        + "; each instrument weighs the same, its own level taken out",
                "shaded: 95 % interval of the mean for each band by itself; none for fewer than " + GroupFigures.FEWEST
                        + " instruments");
        String title =
                "Response to taps in third octaves, by " + study.settings().by().words();
        return Optional.of(new GroupPicture(title, subtitles, curves));
    }

    /**
     * Every instrument's figure of one quantity, in a panel for each resonance.
     *
     * @param study groups against each other
     * @param quantity which
     * @return empty if no two groups have a figure of it
     */
    public static Optional<PointsPicture> points(GroupStudy study, Quantity quantity) {
        return new InstrumentPoints(study, quantity).picture();
    }

    private static GroupPicture.Curve curve(GroupCurve curve) {
        return new GroupPicture.Curve(
                curve.group() + " (" + Figures.count(curve.instruments(), "instrument") + ")",
                curve.bands().stream()
                        .map(b -> new GroupPicture.Dot(
                                b.band().midHz(),
                                b.meanDb(),
                                b.interval95().map(Interval::lower),
                                b.interval95().map(Interval::upper)))
                        .toList());
    }
}
