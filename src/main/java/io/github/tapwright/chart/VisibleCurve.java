package io.github.tapwright.chart;

import io.github.tapwright.tap.ResponseCurve;
import java.util.List;

/**
 * One curve thinned to what a window of so many columns can show: of the points that fall into one column the highest
 * and the lowest are kept, so that no peak is lost, and the band spans all of them.
 */
final class VisibleCurve {

    private final double[] frequencyHz;
    private final double[] levelDb;
    private final double[] lowerDb;
    private final double[] upperDb;
    private int size;

    private VisibleCurve(int most) {
        frequencyHz = new double[most];
        levelDb = new double[most];
        lowerDb = new double[most];
        upperDb = new double[most];
    }

    /** Thins; one point beyond each edge is kept, so that lines leave the window as they should. */
    static VisibleCurve of(ResponseCurve curve, CurveWindow window, int columns) {
        List<ResponseCurve.Point> points = curve.points();
        int from = Math.max(0, firstAtOrAbove(points, window.lowHz()) - 1);
        int to = Math.min(points.size(), firstAtOrAbove(points, window.highHz()) + 1);
        VisibleCurve visible = new VisibleCurve(Math.min(to - from, 2 * (columns + 3)));
        int start = from;
        while (start < to) {
            double column =
                    Math.floor(columns * window.shareOf(points.get(start).frequencyHz()));
            int end = start + 1;
            while (end < to
                    && Math.floor(columns * window.shareOf(points.get(end).frequencyHz())) == column) {
                end++;
            }
            visible.add(points, start, end);
            start = end;
        }
        return visible;
    }

    private static int firstAtOrAbove(List<ResponseCurve.Point> points, double frequencyHz) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).frequencyHz() < frequencyHz) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void add(List<ResponseCurve.Point> points, int start, int end) {
        int highest = start;
        int lowest = start;
        double lower = points.get(start).lowerDb();
        double upper = points.get(start).upperDb();
        for (int i = start + 1; i < end; i++) {
            ResponseCurve.Point point = points.get(i);
            highest = point.levelDb() > points.get(highest).levelDb() ? i : highest;
            lowest = point.levelDb() < points.get(lowest).levelDb() ? i : lowest;
            lower = Math.min(lower, point.lowerDb());
            upper = Math.max(upper, point.upperDb());
        }
        add(points.get(Math.min(highest, lowest)), lower, upper);
        if (highest != lowest) {
            add(points.get(Math.max(highest, lowest)), lower, upper);
        }
    }

    private void add(ResponseCurve.Point point, double lower, double upper) {
        frequencyHz[size] = point.frequencyHz();
        levelDb[size] = point.levelDb();
        lowerDb[size] = lower;
        upperDb[size] = upper;
        size++;
    }

    int size() {
        return size;
    }

    double frequencyHz(int point) {
        return frequencyHz[point];
    }

    double levelDb(int point) {
        return levelDb[point];
    }

    double lowerDb(int point) {
        return lowerDb[point];
    }

    double upperDb(int point) {
        return upperDb[point];
    }
}
