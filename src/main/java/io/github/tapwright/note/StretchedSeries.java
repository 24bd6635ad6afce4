package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.List;

/**
 * The series of a stiff string, f_n = n·f_1·√((1+B·n²)/(1+B)), fitted to measured partials.
 *
 * <p>With y_n = (f_n/n)² it is the straight line y = a + b·n², B = b/a, f_1 = √(a+b). Source of the series:
 * [FletcherRossing1998]. The body and other strings pull partials by some cents, low ones most; so the line starts from
 * medians of pairwise slopes [Theil1950], leaves out what lies 3.5 standard deviations off, and adds to every partial's own
 * variance a common one in cents, just large enough to account for the scatter [PauleMandel1982].
 */
final class StretchedSeries {

    /**
     * A measured partial.
     *
     * @param number n
     * @param hz frequency
     * @param uHz its standard uncertainty
     */
    record Measured(int number, double hz, double uHz) {

        double y() {
            return hz * hz / number / number;
        }

        double uCents() {
            return Cents.PER_NEPER * uHz / hz;
        }
    }

    private static final double OUTLIER = 3.5;
    private static final int ROUNDS = 8;
    private static final int FEWEST_FOR_B = 4;
    private static final double ROUNDING_CENTS = 1e-4;

    private final List<Measured> kept;
    private final boolean inclined;
    private final SeriesLine line;
    private final double scatterCents;

    private StretchedSeries(List<Measured> kept, boolean inclined, SeriesLine line, double scatterCents) {
        this.kept = List.copyOf(kept);
        this.inclined = inclined;
        this.line = line;
        this.scatterCents = scatterCents;
    }

    /**
     * Fits.
     *
     * @param partials at least one, numbers all different
     * @return the series; with fewer than four partials b is 0, a series without stretch
     */
    static StretchedSeries fit(List<Measured> partials) {
        boolean inclined = partials.size() >= FEWEST_FOR_B;
        SeriesLine line = SeriesLine.byMedians(partials, inclined);
        SeriesLine first = line;
        double scatter = 1.4826
                * Median.of(partials.stream()
                        .mapToDouble(p -> Math.abs(first.residualCents(p)))
                        .toArray());
        List<Measured> kept = partials;
        for (int round = 0; round < ROUNDS; round++) {
            List<Measured> inside = inside(partials, line, scatter);
            // A majority of outliers is no majority: then the scatter is the truth.
            kept = 2 * inside.size() > partials.size() ? inside : partials;
            scatter = SeriesLine.scatterCents(kept, inclined);
            line = SeriesLine.weighted(kept, scatter, inclined);
        }
        return new StretchedSeries(kept, inclined, line, scatter);
    }

    private static List<Measured> inside(List<Measured> partials, SeriesLine line, double scatter) {
        List<Measured> inside = new ArrayList<>();
        for (Measured p : partials) {
            double allowed = OUTLIER * Math.hypot(Math.hypot(p.uCents(), scatter), ROUNDING_CENTS);
            if (Math.abs(line.residualCents(p)) <= allowed) {
                inside.add(p);
            }
        }
        return inside;
    }

    boolean used(int number) {
        return kept.stream().anyMatch(p -> p.number() == number);
    }

    /** How many partials the series rests on. */
    int size() {
        return kept.size();
    }

    /** Whether enough partials are left to tell B; the pitch of three left of four or five still comes from an inclined line. */
    boolean tellsStretch() {
        return kept.size() >= FEWEST_FOR_B;
    }

    /** Scatter of the partials about the series beyond what noise explains, cents. */
    double scatterCents() {
        return scatterCents;
    }

    /** f_1, with u² from f_1 = √(a+b). */
    Estimate pitchHz() {
        double f1 = Math.sqrt(line.a() + line.b());
        return estimate(f1, 1 / (2 * f1), 1 / (2 * f1));
    }

    /** B = b/a. */
    Estimate inharmonicity() {
        double value = line.b() / line.a();
        return estimate(value, -value / line.a(), 1 / line.a());
    }

    /**
     * Propagates. The common scatter rests on few partials, the partials' own noise on thousands of bins; the degrees of freedom
     * are those of the scatter, divided by the square of its share in the variance (Welch and Satterthwaite). Source: [GUM],
     * G.4.1.
     */
    private Estimate estimate(double value, double byA, double byB) {
        double variance = line.variance(byA, byB);
        double fromNoise = SeriesLine.weighted(kept, 0, inclined).variance(byA, byB);
        double share = Math.max(0, 1 - fromNoise / variance);
        double free = Math.max(1, kept.size() - (inclined ? 2 : 1)) / (share * share);
        return new Estimate(value, Math.sqrt(variance), share == 0 ? Double.POSITIVE_INFINITY : free);
    }

    /** Frequency of partial n in this series. */
    double hz(int number) {
        return number * Math.sqrt(Math.max(1e-9 * line.a(), line.a() + line.b() * number * number));
    }
}
