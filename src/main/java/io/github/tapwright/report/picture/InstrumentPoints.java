package io.github.tapwright.report.picture;

import io.github.tapwright.chart.PointsPicture;
import io.github.tapwright.chart.PointsPicture.Cluster;
import io.github.tapwright.chart.PointsPicture.Group;
import io.github.tapwright.chart.PointsPicture.Mean;
import io.github.tapwright.chart.PointsPicture.Panel;
import io.github.tapwright.chart.PointsPicture.Point;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupStudy.Membership;
import io.github.tapwright.comparison.group.InstrumentMean;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Summary;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** From a study of groups to a picture of every instrument in it. */
final class InstrumentPoints {

    private final GroupStudy study;
    private final Quantity quantity;

    InstrumentPoints(GroupStudy study, Quantity quantity) {
        this.study = study;
        this.quantity = quantity;
    }

    Optional<PointsPicture> picture() {
        Map<Subject, Map<String, GroupFigures>> subjects = subjects();
        if (subjects.isEmpty()) {
            return Optional.empty();
        }
        List<Group> groups = study.members().stream()
                .map(m -> new Group(
                        m.group(),
                        m.instruments().stream().map(ShopNumber::text).toList()))
                .toList();
        List<Panel> panels = subjects.entrySet().stream()
                .map(s -> new Panel(axis(s.getKey()), clusters(s.getValue())))
                .toList();
        String what = quantity == Quantity.LEVEL
                ? "Level of plucks"
                : quantity.words().substring(0, 1).toUpperCase(Locale.ROOT)
                        + quantity.words().substring(1);
        return Optional.of(new PointsPicture(
                what + " of every instrument, by " + study.settings().by().words(),
                List.of("each point: one instrument, the mean over its sittings"
                        + (quantity == Quantity.FREQUENCY ? " in the common air" : "")
                        + "; line and shade: mean of the group and its 95 % interval, none for fewer than "
                        + GroupFigures.FEWEST + " instruments"),
                groups,
                panels));
    }

    /** Figures of each group by its name, for what at least two groups have. */
    private Map<Subject, Map<String, GroupFigures>> subjects() {
        Map<Subject, Map<String, GroupFigures>> subjects = new LinkedHashMap<>();
        for (GroupDifference d : study.differences()) {
            if (d.subject().quantity() == quantity) {
                Map<String, GroupFigures> byGroup = subjects.computeIfAbsent(d.subject(), s -> new LinkedHashMap<>());
                byGroup.put(d.first().group(), d.first());
                byGroup.put(d.second().group(), d.second());
            }
        }
        return subjects;
    }

    private String axis(Subject subject) {
        String unit = quantity == Quantity.LEVEL ? study.levelUnit() : quantity.unit();
        return subject.whose() + (unit.isEmpty() ? "" : " (" + unit + ")");
    }

    private List<Cluster> clusters(Map<String, GroupFigures> byGroup) {
        return study.members().stream()
                .map(m -> Optional.ofNullable(byGroup.get(m.group()))
                        .map(f -> cluster(m, f))
                        .orElse(Cluster.EMPTY))
                .toList();
    }

    private static Cluster cluster(Membership group, GroupFigures figures) {
        List<Point> points = figures.instruments().stream()
                .map((InstrumentMean i) -> new Point(group.instruments().indexOf(i.instrument()), i.value()))
                .toList();
        Optional<Estimate> mean = figures.count() < GroupFigures.FEWEST
                ? Optional.empty()
                : figures.summary().map(Summary::ofMean);
        return new Cluster(
                points,
                mean.map(e -> new Mean(
                        e.value(),
                        Optional.of(e.value() - e.halfWidth95()),
                        Optional.of(e.value() + e.halfWidth95()))));
    }
}
