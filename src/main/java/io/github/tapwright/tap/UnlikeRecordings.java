package io.github.tapwright.tap;

import io.github.tapwright.statistics.Summary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Whether recordings given as one set sound like one body in one set-up.
 *
 * <p>Each strike's power in bands of a twelfth octave, its strength taken out; of each recording with three strikes or more their mean in
 * dB and their scatter s about it, standard deviation over the bands that matter. Two means that lie further apart than
 * {@value #TIMES}·√(s₁²/n₁ + s₂²/n₂) and {@value #LEAST_DB} dB ask for a warning: resonances of two bodies fitted together come out as those
 * of none. Warns only, because taps at another place do the same.
 */
final class UnlikeRecordings {

    private static final int BANDS_PER_OCTAVE = 12;
    private static final double RELEVANT_DB = 30;

    private static final int FEWEST_STRIKES = 3;

    /** A decay read a few samples earlier or later looks up to 1.5 dB other. Common practice, no source; see docs/methods/tap-resonances.md. */
    private static final double LEAST_DB = 2;

    private static final double TIMES = 3;

    private final List<Mean> recordings = new ArrayList<>();

    /** The mean spectrum of a recording, and how unsure its strikes leave it. */
    private static final class Mean {

        private final int source;
        private final double[] spectrumDb;
        private final double varianceDb2;

        Mean(int source, double[][] strikesDb) {
            this.source = source;
            this.spectrumDb = mean(strikesDb);
            double squares = Arrays.stream(strikesDb)
                    .mapToDouble(s -> apartDb(s, spectrumDb))
                    .map(d -> d * d)
                    .sum();
            this.varianceDb2 = squares / (strikesDb.length - 1) / strikesDb.length;
        }
    }

    UnlikeRecordings(int[] sources, Decays decays, TapSettings settings) {
        double[][] spectraDb = BandLevels.of(decays, settings, BANDS_PER_OCTAVE);
        for (int source : Arrays.stream(sources).distinct().toArray()) {
            double[][] own = IntStream.range(0, sources.length)
                    .filter(s -> sources[s] == source)
                    .mapToObj(s -> spectraDb[s])
                    .toArray(double[][]::new);
            if (own.length >= FEWEST_STRIKES) {
                recordings.add(new Mean(source, own));
            }
        }
    }

    /** The two that lie furthest beyond what is allowed, in words; empty if all sound alike. */
    Optional<String> note() {
        return IntStream.range(0, recordings.size())
                .boxed()
                .flatMap(i -> recordings.subList(i + 1, recordings.size()).stream()
                        .map(other -> Apart.of(recordings.get(i), other)))
                .filter(Apart::tooFar)
                .max(Comparator.comparingDouble(Apart::db))
                .map(Apart::words);
    }

    /** How far two recordings lie apart. */
    private record Apart(Mean first, Mean second, double db, double byChanceDb) {

        static Apart of(Mean first, Mean second) {
            return new Apart(
                    first,
                    second,
                    apartDb(first.spectrumDb, second.spectrumDb),
                    Math.sqrt(first.varianceDb2 + second.varianceDb2));
        }

        boolean tooFar() {
            return db > Math.max(LEAST_DB, TIMES * byChanceDb);
        }

        String words() {
            return String.format(
                    Locale.ROOT,
                    "recordings %d and %d sound like two bodies or two set-ups: their spectra lie %.1f dB apart, where the"
                            + " scatter of strikes explains %.1f dB; resonances fitted to both may be those of neither, so analyse"
                            + " them one by one",
                    first.source + 1,
                    second.source + 1,
                    db,
                    byChanceDb);
        }
    }

    private static double[] mean(double[][] spectraDb) {
        return IntStream.range(0, spectraDb[0].length)
                .mapToDouble(b -> Arrays.stream(spectraDb)
                        .mapToDouble(s -> s[b])
                        .average()
                        .orElseThrow())
                .toArray();
    }

    /** Standard deviation of the difference over the bands that matter in either, dB: what all bands share is strength. */
    private static double apartDb(double[] a, double[] b) {
        double top = Math.max(
                Arrays.stream(a).max().orElseThrow(), Arrays.stream(b).max().orElseThrow());
        double floor = top - RELEVANT_DB;
        double[] differences = IntStream.range(0, a.length)
                .filter(k -> Math.max(a[k], b[k]) > floor)
                .mapToDouble(k -> Math.max(a[k], floor) - Math.max(b[k], floor))
                .toArray();
        return differences.length < 2 ? 0 : Summary.of(differences).standardDeviation();
    }
}
