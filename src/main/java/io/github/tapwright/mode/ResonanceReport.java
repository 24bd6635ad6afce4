package io.github.tapwright.mode;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns shared modes into resonances, leaves out what is none, and says why. */
final class ResonanceReport {

    private static final double LEAST_Q = 4;
    private static final double LARGEST_Q = 150;
    private static final double FAINTEST_DB = -45;
    private static final double LARGEST_RELATIVE_U_FREQUENCY = 0.01;
    private static final double LARGEST_RELATIVE_U_Q = 0.3;

    private static final double STRONG_DB = -10;

    private static final int MOST_TONES_NAMED = 3;

    private final List<Resonance> resonances = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();
    private int unsteady;

    ResonanceReport(List<BandSurvey.Found> found, TapSettings settings) {
        List<BandSurvey.Found> inRange = found.stream()
                .filter(f -> f.mode().pole().naturalHz() >= settings.lowHz()
                        && f.mode().pole().naturalHz() <= settings.highHz())
                .toList();
        List<BandSurvey.Found> bodies = inRange.stream()
                .filter(f -> f.mode().pole().q() >= LEAST_Q && f.mode().pole().q() <= LARGEST_Q)
                .toList();
        double[] heights = heights(bodies);
        double top = Arrays.stream(heights).max().orElse(0);
        for (int i = 0; i < bodies.size(); i++) {
            consider(bodies.get(i), heights[i] - top);
        }
        noteTones(inRange);
        if (unsteady > 0) {
            warnings.add(
                    unsteady + (unsteady == 1 ? " weaker feature is" : " weaker features are")
                            + " not listed: not the same when the decay is read from a later start, lost by then, or too unsure");
        }
    }

    /** What rings on longer than a body does: the strongest few by name. */
    private void noteTones(List<BandSurvey.Found> inRange) {
        List<BandSurvey.Found> tones = new ArrayList<>(
                inRange.stream().filter(f -> f.mode().pole().q() > LARGEST_Q).toList());
        if (tones.isEmpty()) {
            return;
        }
        tones.sort(Comparator.comparingDouble(f -> -f.mode().meanHeightDb()));
        String named = tones.stream()
                .limit(MOST_TONES_NAMED)
                .map(f -> String.format(
                        Locale.ROOT,
                        "%.1f Hz (Q %.0f)",
                        f.mode().pole().naturalHz(),
                        f.mode().pole().q()))
                .collect(Collectors.joining(", "));
        warnings.add((tones.size() == 1 ? "one tone rings" : tones.size() + " tones ring")
                + " on too long for a body (a string, a hum, a whistle): " + named
                + (tones.size() > MOST_TONES_NAMED ? " and weaker ones" : ""));
    }

    /** Mean height over the strikes, each strike's strength (its own mean height) taken out. */
    private static double[] heights(List<BandSurvey.Found> found) {
        return found.stream().mapToDouble(f -> f.mode().meanHeightDb()).toArray();
    }

    private void consider(BandSurvey.Found f, double levelDb) {
        ModelAverage average = new ModelAverage(f.mode().pole(), f.models());
        PoleEstimate uncertainty = average.mean();
        Estimate frequency = uncertainty.frequencyHz();
        Estimate q = uncertainty.q();
        if (levelDb < FAINTEST_DB || isLesserTwin(f)) {
            unsteady += levelDb < FAINTEST_DB ? 0 : 1;
            return;
        }
        Optional<String> doubt = doubt(average, frequency, q);
        if (doubt.isPresent()) {
            leaveOut(frequency.value(), levelDb, doubt.orElseThrow());
            return;
        }
        resonances.add(new Resonance(
                frequency,
                q,
                uncertainty.decayTimeSeconds(),
                level(f, levelDb),
                f.mode().strikes(),
                neighbourNote(f)));
    }

    private static Optional<String> doubt(ModelAverage average, Estimate frequency, Estimate q) {
        if (!average.isBelieved()) {
            return Optional.of("not the same when the decay is read from a later start");
        }
        if (frequency.standardUncertainty() >= LARGEST_RELATIVE_U_FREQUENCY * frequency.value()
                || q.standardUncertainty() >= LARGEST_RELATIVE_U_Q * q.value()) {
            return Optional.of("too unsure, its Q or frequency is known too poorly");
        }
        return average.isSeenAgain()
                ? Optional.empty()
                : Optional.of("lost in the noise before the decay can be read from a later start");
    }

    /** A strong one must not go missing without a word of where it is: 0 dB may be its own level. */
    private void leaveOut(double frequencyHz, double levelDb, String doubt) {
        if (levelDb < STRONG_DB) {
            unsteady++;
            return;
        }
        warnings.add(String.format(
                Locale.ROOT,
                "a strong feature at %.1f Hz, %s dB, is not listed: %s",
                frequencyHz,
                Figures.text(levelDb, 1),
                doubt));
    }

    /** Spread of the level from strike to strike; with one strike, what the noise alone makes of it. */
    private static Estimate level(BandSurvey.Found f, double levelDb) {
        SharedMode mode = f.mode();
        int n = mode.strikes();
        double noise = 0;
        for (int s = 0; s < n; s++) {
            double size = Math.max(1e-30, Math.hypot(mode.cosine(s), mode.sine(s)));
            noise += Math.pow(20 / Math.log(10), 2) * f.fit().strengthVariance(f.index()) / (size * size) / n / n;
        }
        if (n < 3) {
            return Estimate.of(levelDb, Math.sqrt(noise));
        }
        double[] relative = new double[n];
        double mean = 0;
        for (int s = 0; s < n; s++) {
            relative[s] = mode.heightDb(s) - strength(f, s);
            mean += relative[s] / n;
        }
        double sum = 0;
        for (double r : relative) {
            sum += (r - mean) * (r - mean);
        }
        return new Estimate(levelDb, Math.sqrt(Math.max(noise, sum / (n - 1) / n)), n - 1.0);
    }

    /** A strike's strength in the window: power mean over its modes, dB. */
    private static double strength(BandSurvey.Found f, int strike) {
        double power = 0;
        for (SharedMode mode : f.fit().modes()) {
            power += Math.pow(10, mode.heightDb(strike) / 10);
        }
        return 10 * Math.log10(Math.max(1e-30, power));
    }

    /** Whether the fit holds a longer-ringing pole at the same place: the two are one resonance. */
    private static boolean isLesserTwin(BandSurvey.Found f) {
        Pole own = f.mode().pole();
        return f.fit().poles().stream().anyMatch(other -> other.sigma() < own.sigma() && own.isTwinOf(other));
    }

    private static String neighbourNote(BandSurvey.Found f) {
        Pole own = f.mode().pole();
        if (f.fit().poles().stream().anyMatch(other -> other.sigma() > own.sigma() && own.isTwinOf(other))) {
            return "dies away faster at first: these numbers are of its later decay";
        }
        for (Pole other : f.fit().poles()) {
            double distance = Math.abs(other.dampedHz() - own.dampedHz());
            if (distance > 0 && distance < 0.5 * (own.widthHz() + other.widthHz())) {
                return String.format(
                        Locale.ROOT, "overlaps its neighbour at %.1f Hz; both rest on the fit", other.naturalHz());
            }
        }
        return "";
    }

    List<Resonance> resonances() {
        return resonances;
    }

    List<String> warnings() {
        return warnings;
    }
}
