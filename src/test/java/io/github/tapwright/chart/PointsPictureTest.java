package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.chart.PointsPicture.Cluster;
import io.github.tapwright.chart.PointsPicture.Group;
import io.github.tapwright.chart.PointsPicture.Mean;
import io.github.tapwright.chart.PointsPicture.Panel;
import io.github.tapwright.chart.PointsPicture.Point;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.XYPlot;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PointsPictureTest {

    private static final List<Group> GROUPS = List.of(
            new Group("solid tops", List.of("40", "41", "42")), new Group("laminated tops", List.of("50", "51")));

    private static PointsPicture picture() {
        return new PointsPicture(
                "Frequency of every instrument",
                List.of("each point: one instrument"),
                GROUPS,
                List.of(
                        new Panel(
                                "main air (Hz)",
                                List.of(
                                        cluster(new Mean(101, Optional.of(99.0), Optional.of(103.0)), 100, 101, 102),
                                        cluster(new Mean(97, Optional.empty(), Optional.empty()), 96, 98))),
                        new Panel("main top (Hz)", List.of(cluster(null, 180), Cluster.EMPTY))));
    }

    private static Cluster cluster(@Nullable Mean mean, double... values) {
        List<Point> points = new ArrayList<>();
        for (double value : values) {
            points.add(new Point(points.size(), value));
        }
        return new Cluster(points, Optional.ofNullable(mean));
    }

    @Test
    void everyInstrumentHasItsPointInAColumnOfItsOwnThatAllPanelsShare() {
        CombinedDomainXYPlot plot =
                (CombinedDomainXYPlot) new PointsChart(picture()).chart().getXYPlot();
        XYPlot air = plot.getSubplots().get(0);
        XYPlot top = plot.getSubplots().get(1);

        assertThat(columns(air, 0)).containsExactly(0.0, 1.0, 2.0);
        // One column stays empty between groups.
        assertThat(columns(air, 1)).containsExactly(4.0, 5.0);
        assertThat(columns(top, 0)).containsExactly(0.0);
        assertThat(columns(top, 1)).isEmpty();
        assertThat(air.getDomainAxis()).isSameAs(top.getDomainAxis());
        assertThat(plot.getDomainAxis().getRange().contains(5)).isTrue();
        // The outermost points and the interval lie within the panel, with room for whole marks.
        assertThat(air.getRangeAxis().getLowerBound()).isLessThan(96);
        assertThat(air.getRangeAxis().getUpperBound()).isGreaterThan(103);
    }

    private static List<Double> columns(XYPlot plot, int group) {
        List<Double> columns = new ArrayList<>();
        for (int i = 0; i < plot.getDataset(1).getItemCount(group); i++) {
            columns.add(plot.getDataset(1).getXValue(group, i));
        }
        return columns;
    }

    @Test
    void theFileHoldsShopNumbersGroupsAndAxesAsText(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("points.svg");
        ChartFile.write(picture(), file);

        assertThat(Files.readString(file))
                .contains("solid tops", "laminated tops", "main air (Hz)", "main top (Hz)", ">40<", ">51<");
        assertThat(Pattern.compile("<polygon|<path|<ellipse|<circle")
                        .matcher(Files.readString(file))
                        .results()
                        .count())
                .isGreaterThan(6);
    }

    @Test
    void manyLongNamesStandUprightInsteadOfRunningIntoEachOther() {
        List<String> names =
                IntStream.range(0, 60).mapToObj(i -> "2026-" + (100 + i)).toList();
        PointsPicture crowd = new PointsPicture(
                "",
                List.of(),
                List.of(new Group("all", names)),
                List.of(new Panel("Q", List.of(cluster(null, 20, 21)))));
        assertThat(namesStandUpright(crowd)).isTrue();
        assertThat(namesStandUpright(picture())).isFalse();
    }

    private static boolean namesStandUpright(PointsPicture picture) {
        JFreeChart chart = new PointsChart(picture).chart();
        chart.createBufferedImage(900, 400);
        return chart.getXYPlot().getDomainAxis().isVerticalTickLabels();
    }

    @Test
    void aFrameIsFilledWhateverItsShapeAndAWiderPictureIsNotEnlarged() {
        Raster raster = Raster.filling(picture(), 700, 333, 1.5, Light.NIGHT);

        assertThat(raster.width()).isEqualTo(1050);
        assertThat(raster.height()).isEqualTo(500);
        assertThat(Raster.usualHeight(picture())).isGreaterThan(2 * 130);
    }

    @Test
    void aPictureOfNothingOrWithPointsOfNobodyIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Panel("Q", List.of(Cluster.EMPTY)))
                .withMessageContaining("without points");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new PointsPicture("", List.of(), GROUPS, List.of(new Panel("Q", List.of(cluster(null, 1))))))
                .withMessageContaining("every group");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PointsPicture(
                        "", List.of(), GROUPS, List.of(new Panel("Q", List.of(Cluster.EMPTY, cluster(null, 1, 2, 3))))))
                .withMessageContaining("no instrument of laminated tops");
    }
}
