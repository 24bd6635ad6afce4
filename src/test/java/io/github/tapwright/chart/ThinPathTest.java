package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class ThinPathTest {

    @Test
    void aStraightLineNeedsItsEndsOnly() {
        assertThat(points(thin(x -> 3 + 0.25 * x))).hasSize(2);
    }

    @Test
    void aSmoothCurveNeedsFewPointsAndNoneLiesFurtherOffThanAllowed() {
        DoubleUnaryOperator hill = x -> 300 / (1 + Math.pow((x - 500) / 40, 2));
        List<Point2D> kept = points(thin(hill));

        assertThat(kept).hasSizeLessThan(150);
        assertWithin(kept, hill);
    }

    @Test
    void noiseKeepsItsPoints() {
        double[] noise = new Random(3).doubles(1001, 0, 100).toArray();
        List<Point2D> kept = points(thin(x -> noise[(int) x]));

        assertThat(kept).hasSizeGreaterThan(900);
        assertWithin(kept, x -> noise[(int) x]);
    }

    @Test
    void stepsUprightAndTheWayBackAreKept() {
        ThinPath path = new ThinPath();
        path.to(0, 0);
        path.to(10, 0);
        path.to(10, 50);
        path.to(20, 50);
        path.to(5, 50);
        path.to(0, 50);

        assertThat(points(path.path()))
                .containsExactly(
                        new Point2D.Double(0, 0),
                        new Point2D.Double(10, 0),
                        new Point2D.Double(10, 50),
                        new Point2D.Double(20, 50),
                        new Point2D.Double(0, 50));
    }

    private static Path2D thin(DoubleUnaryOperator curve) {
        ThinPath path = new ThinPath();
        for (int x = 0; x <= 1000; x++) {
            path.to(x, curve.applyAsDouble(x));
        }
        return path.path();
    }

    private static void assertWithin(List<Point2D> kept, DoubleUnaryOperator curve) {
        int piece = 0;
        for (int x = 0; x <= 1000; x++) {
            while (kept.get(piece + 1).getX() < x) {
                piece++;
            }
            Point2D a = kept.get(piece);
            Point2D b = kept.get(piece + 1);
            double drawn = a.getY() + (b.getY() - a.getY()) * (x - a.getX()) / (b.getX() - a.getX());
            assertThat(drawn).isCloseTo(curve.applyAsDouble(x), within(ThinPath.TOLERANCE + 1e-9));
        }
    }

    private static List<Point2D> points(Path2D path) {
        List<Point2D> points = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
            i.currentSegment(at);
            points.add(new Point2D.Double(at[0], at[1]));
        }
        return points;
    }
}
