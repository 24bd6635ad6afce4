package io.github.tapwright.note;

import io.github.tapwright.note.SpectralPeaks.Peak;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Decides between octaves and twelfths by what the peaks of the spectrum say.
 *
 * <p>For every candidate the stretched series is followed upwards, n = 1, 2, 3 …, and the peaks on it are collected. A
 * pitch too high leaves peaks unexplained, one too low leaves partials of its own missing; so the score is the share of the
 * peaks' levels that is explained, times a power of the share of the candidate's partials that are there. The power is below 1,
 * because a string plucked at 1/2 lacks every second partial. A candidate whose partials have a common divisor is a fraction of
 * the pitch and out of question. Derived here.
 */
final class HarmonicEvidence {

    private static final List<Double> RATIOS = List.of(0.25, 1 / 3.0, 0.5, 2 / 3.0, 1.0, 1.5, 2.0, 3.0, 4.0);
    private static final int DEEPEST_SUBMULTIPLE = 6;
    private static final double EVIDENCE_DB = 50;
    private static final double PRESENCE_POWER = 0.7;
    private static final int KNOWN = 6;
    private static final double LARGEST_STRETCH = 3e-3;
    private static final double SAME = 0.02;
    private static final double LEAST_SCORE = 0.25;

    private final List<Peak> peaks;
    private final double binHz;
    private final NoteSettings settings;
    private final double highestHz;

    HarmonicEvidence(SpectralPeaks spectrum, NoteSettings settings, double highestHz) {
        this.peaks = spectrum.peaks();
        this.binHz = spectrum.binHz();
        this.settings = settings;
        this.highestHz = highestHz;
    }

    /**
     * A pitch with the peaks that speak for it.
     *
     * @param fundamentalHz f_0 of f_n = n·f_0·√(1+B·n²)
     * @param stretch B
     * @param peaks the peak of each partial found, by number
     * @param score between 0 and 1
     */
    record Series(double fundamentalHz, double stretch, Map<Integer, Peak> peaks, double score) {

        double hz(int number) {
            return number * fundamentalHz * Math.sqrt(1 + stretch * number * number);
        }
    }

    /**
     * The candidate with most evidence.
     *
     * @param guesses first guesses, Hz, possibly none
     * @return the best series, empty if none explains the peaks
     */
    Optional<Series> best(List<Double> guesses) {
        Series best = null;
        for (double candidate : candidates(guesses)) {
            Series series = follow(candidate);
            best = best == null || series.score() > best.score() ? series : best;
        }
        return Optional.ofNullable(best)
                .filter(s -> s.score() >= LEAST_SCORE && s.peaks().size() > 1);
    }

    private List<Double> candidates(List<Double> guesses) {
        List<Double> all = new ArrayList<>();
        for (double guess : guesses) {
            RATIOS.forEach(ratio -> addNew(all, guess * ratio));
        }
        peaks.stream()
                .sorted((p, q) -> Double.compare(q.levelDb(), p.levelDb()))
                .limit(4)
                .forEach(p -> {
                    for (int n = 1; n <= DEEPEST_SUBMULTIPLE; n++) {
                        addNew(all, p.hz() / n);
                    }
                });
        return all;
    }

    private void addNew(List<Double> all, double hz) {
        if (settings.allows(hz) && all.stream().noneMatch(other -> Math.abs(other / hz - 1) < SAME)) {
            all.add(hz);
        }
    }

    private Series follow(double candidate) {
        Map<Integer, Peak> found = new TreeMap<>();
        double fundamental = candidate;
        double stretch = 0;
        for (int n = 1; n < 400; n++) {
            double expected = n * fundamental * Math.sqrt(1 + stretch * n * n);
            if (expected > highestHz) {
                break;
            }
            Optional<Peak> peak = nearest(expected, tolerance(n, fundamental, found.size()));
            if (peak.isPresent()) {
                found.put(n, peak.orElseThrow());
                SeriesLine line = line(found);
                fundamental = Math.sqrt(line.a());
                stretch = Math.max(0, Math.min(LARGEST_STRETCH, line.b() / line.a()));
            }
        }
        return new Series(fundamental, stretch, found, score(found));
    }

    /** Before the series is known a guess may be off; later its foresight is good to a few hundredths of the spacing. */
    private double tolerance(int n, double fundamental, int known) {
        double loose = Math.min(0.03 * n * fundamental, 0.2 * fundamental);
        return Math.max(1.5 * binHz, known < KNOWN ? loose : 0.08 * fundamental);
    }

    private static SeriesLine line(Map<Integer, Peak> found) {
        List<StretchedSeries.Measured> partials = found.entrySet().stream()
                .map(e -> new StretchedSeries.Measured(
                        e.getKey(),
                        e.getValue().hz(),
                        pullCents(e.getKey()) / Cents.PER_NEPER * e.getValue().hz()))
                .toList();
        return SeriesLine.weighted(partials, 0, partials.size() >= KNOWN);
    }

    /** How far a body may pull partial n: the low ones lie among its strong resonances. */
    private static double pullCents(int n) {
        return 1 + 15.0 / n;
    }

    private Optional<Peak> nearest(double hz, double tolerance) {
        return peaks.stream()
                .filter(p -> Math.abs(p.hz() - hz) <= tolerance)
                .max((p, q) -> Double.compare(worth(p, hz, tolerance), worth(q, hz, tolerance)));
    }

    /** Level less a penalty for distance: a strong peak off the mark loses to a weaker one on it. */
    private static double worth(Peak p, double hz, double tolerance) {
        double distance = Math.abs(p.hz() - hz) / tolerance;
        return p.levelDb() - 30 * distance * distance;
    }

    private double score(Map<Integer, Peak> found) {
        if (found.isEmpty() || commonDivisor(found) > 1) {
            return 0;
        }
        double all = peaks.stream().mapToDouble(HarmonicEvidence::weight).sum();
        double explained =
                found.values().stream().mapToDouble(HarmonicEvidence::weight).sum();
        int last = found.entrySet().stream()
                .filter(e -> weight(e.getValue()) > 0)
                .mapToInt(Map.Entry::getKey)
                .max()
                .orElse(1);
        double there = found.keySet().stream().filter(n -> n <= last).count();
        return explained / all * Math.pow(there / last, PRESENCE_POWER);
    }

    private static double weight(Peak p) {
        return Math.max(0, p.levelDb() + EVIDENCE_DB);
    }

    /** Of partials that count; a single one divides itself unless it is the first. */
    private static int commonDivisor(Map<Integer, Peak> found) {
        int divisor = 0;
        for (Map.Entry<Integer, Peak> e : found.entrySet()) {
            if (weight(e.getValue()) > 0) {
                divisor = gcd(divisor, e.getKey());
            }
        }
        return divisor;
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
