package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.tap.ResponseCurve;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class CurveDrawingTest {

    private static final int POINTS = 8192;

    /** Flat at −40 dB with one point of the highest level. */
    private static ResponseCurve needle(int place) {
        return new ResponseCurve(
                IntStream.range(0, POINTS)
                        .mapToObj(i -> new ResponseCurve.Point(
                                hz(i), i == place ? 0 : -40, i == place ? -1 : -41, i == place ? 1 : -39))
                        .toList(),
                1,
                5);
    }

    private static double hz(int point) {
        return 60 + 940.0 * point / POINTS;
    }

    @Test
    void thinningLosesNoPeak() {
        CurveWindow window = new CurveWindow(60, 1000, -60, 20);
        for (int place = 1; place < POINTS; place += 997) {
            VisibleCurve thin = VisibleCurve.of(needle(place), window, 300);
            double highest = IntStream.range(0, thin.size())
                    .mapToDouble(thin::levelDb)
                    .max()
                    .orElseThrow();
            assertThat(highest).as("needle at %d", place).isZero();
            assertThat(thin.size()).isLessThanOrEqualTo(2 * 303);
        }
    }

    @Test
    void thinnedPointsStayInOrder() {
        VisibleCurve thin = VisibleCurve.of(needle(4000), new CurveWindow(100, 900, -60, 20), 400);
        for (int i = 1; i < thin.size(); i++) {
            assertThat(thin.frequencyHz(i)).isGreaterThan(thin.frequencyHz(i - 1));
        }
    }

    @Test
    void placesAndFiguresAgree() {
        CurveDrawing drawing = new CurveDrawing(List.of(new Trace("a", needle(2000), List.of())), 440);
        CurveSheet sheet = drawing.draw(drawing.everything(), 800, 400, 1, Light.DAY);
        assertThat(sheet.frequencyHzAt(x(sheet, 196))).isCloseTo(196, within(1e-9));
        assertThat(sheet.levelDbAt(y(sheet, -17))).isCloseTo(-17, within(1e-9));
        assertThat(sheet.holds(x(sheet, 196), y(sheet, -17))).isTrue();
        assertThat(sheet.holds(1, 1)).isFalse();
    }

    @Test
    void theCurveIsDrawnWhereTheSheetSaysItIs() {
        Trace trace = new Trace("a", needle(2000), List.of());
        CurveDrawing drawing = new CurveDrawing(List.of(trace), 440);
        CurveSheet sheet = drawing.draw(drawing.everything(), 800, 400, 1, Light.DAY);
        int x = (int) Math.round(x(sheet, hz(6000)));
        int y = (int) Math.round(y(sheet, -40));
        assertThat(leastGreen(sheet.raster(), x, y, 2)).as("a line").isLessThan(0xA0);
        assertThat(leastGreen(sheet.raster(), x, (int) Math.round(y(sheet, -20)), 1))
                .as("paper, or a line of the grid")
                .isGreaterThan(0xD0);
    }

    private static double x(CurveSheet sheet, double hz) {
        CurveWindow window = sheet.window();
        return sheet.left()
                + sheet.width() * Math.log(hz / window.lowHz()) / Math.log(window.highHz() / window.lowHz());
    }

    private static double y(CurveSheet sheet, double db) {
        CurveWindow window = sheet.window();
        return sheet.top() + sheet.height() * (window.highDb() - db) / (window.highDb() - window.lowDb());
    }

    /** The least green of a column around a place: little in the first curve's blue, much in paper and grid. */
    private static int leastGreen(Raster raster, int x, int y, int reach) {
        int[] pixels = raster.pixels();
        return IntStream.rangeClosed(y - reach, y + reach)
                .map(row -> pixels[row * raster.width() + x] >> 8 & 0xFF)
                .min()
                .orElseThrow();
    }

    @Test
    void manyCurvesGoWithoutBandsAndSaySo() {
        List<Trace> four = IntStream.range(0, 4)
                .mapToObj(i -> new Trace("c" + i, needle(1000 * i + 5), List.of()))
                .toList();
        assertThat(new CurveDrawing(four, 440).showsBands()).isFalse();
        assertThat(new CurveDrawing(four.subList(0, 3), 440).showsBands()).isTrue();
    }

    @Test
    void withoutCurvesThereAreAxesAlone() {
        CurveDrawing none = new CurveDrawing(List.of(), 440);
        CurveSheet sheet = none.draw(none.everything(), 500, 300, 2, Light.NIGHT);
        assertThat(sheet.raster().width()).isEqualTo(1000);
        assertThat(sheet.raster().height()).isEqualTo(600);
    }
}
