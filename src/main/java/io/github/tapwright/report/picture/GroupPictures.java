package io.github.tapwright.report.picture;

import io.github.tapwright.chart.GroupPicture;
import io.github.tapwright.chart.PointsPicture;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.group.GroupCurve;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.statistics.Interval;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** From groups of instruments to pictures: mean responses, and every instrument by itself. */
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
     * Every instrument's own figure for one question.
     *
     * @param study groups against each other
     * @param subject the question
     * @return empty if nobody has a figure
     */
    public static Optional<PointsPicture> points(GroupStudy study, Subject subject) {
        Map<String, GroupFigures> groups = new LinkedHashMap<>();
        study.differences().stream()
                .filter(d -> d.subject().equals(subject))
                .flatMap(d -> Stream.of(d.first(), d.second()))
                .forEach(g -> groups.putIfAbsent(g.group(), g));
        if (groups.values().stream().allMatch(g -> g.instruments().isEmpty())) {
            return Optional.empty();
        }
        String unit = subject.quantity().unit();
        return Optional.of(new PointsPicture(
                subject.words(),
                List.of("every instrument's mean, in the common air; bar: mean of the group"),
                subject.words() + (unit.isEmpty() ? "" : " (" + unit + ")"),
                groups.values().stream().map(GroupPictures::points).toList()));
    }

    private static PointsPicture.Group points(GroupFigures group) {
        return new PointsPicture.Group(
                group.group(),
                group.instruments().stream()
                        .map(i -> new PointsPicture.Point(i.instrument().text(), i.value()))
                        .toList());
    }

    private static GroupPicture.Curve curve(GroupCurve curve) {
        String counted = curve.instruments() + " instrument" + (curve.instruments() == 1 ? "" : "s");
        return new GroupPicture.Curve(
                curve.group() + " (" + counted + ")",
                curve.bands().stream()
                        .map(b -> new GroupPicture.Dot(
                                b.band().midHz(),
                                b.meanDb(),
                                b.interval95().map(Interval::lower),
                                b.interval95().map(Interval::upper)))
                        .toList());
    }
}
