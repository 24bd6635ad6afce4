package io.github.tapwright.note;

import io.github.tapwright.note.StretchedSeries.Measured;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The straight line (f_n/n)² = a + b·n² through measured partials, and the covariance of a and b. */
final class SeriesLine {

    private static final int BISECTIONS = 60;
    private static final double LARGEST_SCATTER_CENTS = 100;

    private final double a;
    private final double b;
    private final double[][] covariance;

    private SeriesLine(double a, double b, double[][] covariance) {
        this.a = a;
        this.b = b;
        this.covariance = covariance;
    }

    double a() {
        return a;
    }

    double b() {
        return b;
    }

    /** Variance of a quantity that changes by so much with a and with b. */
    double variance(double byA, double byB) {
        double sum = byA * byA * covariance[0][0] + 2 * byA * byB * covariance[0][1] + byB * byB * covariance[1][1];
        return Math.max(0, sum);
    }

    /** How far a partial lies above the line, cents. */
    double residualCents(Measured p) {
        double line = a + b * p.number() * p.number();
        return 0.5 * Cents.PER_NEPER * (p.y() - line) / line;
    }

    private record Weighted(double value, double weight) {}

    /** A line few wild partials cannot move: weighted median of pairwise slopes, then median of intercepts. */
    static SeriesLine byMedians(List<Measured> partials, boolean stretched) {
        List<Weighted> slopes = new ArrayList<>();
        for (Measured p : partials) {
            for (Measured q : partials) {
                if (p.number() < q.number()) {
                    double run = (double) q.number() * q.number() - (double) p.number() * p.number();
                    slopes.add(new Weighted((q.y() - p.y()) / run, run));
                }
            }
        }
        double slope = stretched ? weightedMedian(slopes) : 0;
        double intercept = weightedMedian(partials.stream()
                .map(p -> new Weighted(p.y() - slope * p.number() * p.number(), 1))
                .toList());
        return new SeriesLine(intercept, slope, new double[2][2]);
    }

    private static double weightedMedian(List<Weighted> values) {
        List<Weighted> sorted = new ArrayList<>(values);
        sorted.sort(Comparator.comparingDouble(Weighted::value));
        double half = sorted.stream().mapToDouble(Weighted::weight).sum() / 2;
        double sum = 0;
        for (Weighted w : sorted) {
            sum += w.weight();
            if (sum >= half) {
                return w.value();
            }
        }
        throw new IllegalArgumentException("no partials, no series");
    }

    /** Least squares with weights from each partial's own uncertainty and the common scatter. */
    static SeriesLine weighted(List<Measured> partials, double scatterCents, boolean stretched) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double t0 = 0;
        double t1 = 0;
        for (Measured p : partials) {
            double x = (double) p.number() * p.number();
            double w = weight(p, scatterCents);
            s0 += w;
            s1 += w * x;
            s2 += w * x * x;
            t0 += w * p.y();
            t1 += w * x * p.y();
        }
        if (!stretched) {
            return new SeriesLine(t0 / s0, 0, new double[][] {{1 / s0, 0}, {0, 0}});
        }
        double determinant = s0 * s2 - s1 * s1;
        return new SeriesLine((s2 * t0 - s1 * t1) / determinant, (s0 * t1 - s1 * t0) / determinant, new double[][] {
            {s2 / determinant, -s1 / determinant}, {-s1 / determinant, s0 / determinant}
        });
    }

    /** 1/u²(y) with u(y) = 2·y·u(f)/f. */
    private static double weight(Measured p, double scatterCents) {
        double cents = Math.max(1e-9, Math.hypot(p.uCents(), scatterCents));
        double u = 2 * p.y() * cents / Cents.PER_NEPER;
        return 1 / (u * u);
    }

    /** The common scatter that makes the weighted squares as large as their number allows; 0 if noise suffices. */
    static double scatterCents(List<Measured> partials, boolean stretched) {
        int free = partials.size() - (stretched ? 2 : 1);
        if (free < 1 || excess(partials, 0, stretched, free) <= 0) {
            return 0;
        }
        double low = 0;
        double high = LARGEST_SCATTER_CENTS;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (excess(partials, middle, stretched, free) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private static double excess(List<Measured> partials, double scatter, boolean stretched, int free) {
        SeriesLine line = weighted(partials, scatter, stretched);
        double sum = 0;
        for (Measured p : partials) {
            double miss = p.y() - line.a - line.b * p.number() * p.number();
            sum += weight(p, scatter) * miss * miss;
        }
        return sum - free;
    }
}
