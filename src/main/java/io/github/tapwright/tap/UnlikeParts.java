package io.github.tapwright.tap;

import io.github.tapwright.statistics.Summary;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Whether strikes given as one set sound like one body in one set-up: each recording against the others, and in each recording what
 * came before some strike against what came from it on.
 *
 * <p>Each strike's power in bands of a twelfth octave, its strength taken out; of each part with three strikes or more their mean in
 * dB and their scatter s about it, standard deviation over the bands that matter. Two means that lie further apart than
 * {@value #TIMES}·√(s₁²/n₁ + s₂²/n₂), within a recording {@value #TIMES_WITHIN} times that root, and {@value #LEAST_DB} dB ask for a
 * warning: resonances of two bodies fitted together come out as those of none. Warns only, because taps at another place do the same.
 */
final class UnlikeParts {

    private static final int BANDS_PER_OCTAVE = 12;
    private static final double RELEVANT_DB = 30;

    private static final int FEWEST_STRIKES = 3;

    /** A decay read a few samples earlier or later looks up to 1.5 dB other. Common practice, no source; see docs/methods/tap-resonances.md. */
    private static final double LEAST_DB = 2;

    private static final double TIMES = 3;

    /** Within a recording every strike is tried as the first of another part, so chance has more turns. */
    private static final double TIMES_WITHIN = 4;

    private final int recordingCount;
    private final List<Strike> strikes;
    private final double[][] spectraDb;

    /**
     * Looks at strikes.
     *
     * @param recordingCount how many recordings were given, used or not
     * @param strikes those used, in order of recording and time
     * @param decays of these strikes
     */
    UnlikeParts(int recordingCount, List<Strike> strikes, Decays decays, TapSettings settings) {
        this.recordingCount = recordingCount;
        this.strikes = List.copyOf(strikes);
        this.spectraDb = BandLevels.of(decays, settings, BANDS_PER_OCTAVE);
    }

    /** Some strikes that follow each other: the mean of their spectra, and how unsure their scatter leaves it. */
    private static final class Part {

        private final Strike first;
        private final Strike last;
        private final double[] spectrumDb;
        private final double varianceDb2;

        Part(List<Strike> strikes, double[][] strikesDb) {
            this.first = strikes.get(0);
            this.last = strikes.get(strikes.size() - 1);
            this.spectrumDb = mean(strikesDb);
            double squares = Arrays.stream(strikesDb)
                    .mapToDouble(s -> apartDb(s, spectrumDb))
                    .map(d -> d * d)
                    .sum();
            this.varianceDb2 = squares / (strikesDb.length - 1) / strikesDb.length;
        }

        int recording() {
            return first.source() + 1;
        }
    }

    private Part part(int from, int to) {
        return new Part(strikes.subList(from, to), Arrays.copyOfRange(spectraDb, from, to));
    }

    /** The two parts that lie furthest beyond what is allowed, in words; empty if all sound alike. Recordings come before their parts. */
    Optional<String> note() {
        List<Stretch> recordings = recordings();
        List<Part> whole = recordings.stream()
                .filter(r -> r.to - r.from >= FEWEST_STRIKES)
                .map(r -> part(r.from, r.to))
                .toList();
        Stream<Apart> recordingByRecording = IntStream.range(0, whole.size())
                .boxed()
                .flatMap(i -> whole.subList(i + 1, whole.size()).stream().map(other -> Apart.of(whole.get(i), other)));
        return furthest(recordingByRecording, TIMES)
                .map(UnlikeParts::ofRecordings)
                .or(() -> furthest(recordings.stream().flatMap(this::split), TIMES_WITHIN)
                        .map(this::ofOneRecording));
    }

    /** Strikes that follow each other, the end left out. */
    private record Stretch(int from, int to) {}

    private List<Stretch> recordings() {
        int[] starts = IntStream.range(0, strikes.size())
                .filter(i ->
                        i == 0 || strikes.get(i).source() != strikes.get(i - 1).source())
                .toArray();
        return IntStream.range(0, starts.length)
                .mapToObj(r -> new Stretch(starts[r], r + 1 < starts.length ? starts[r + 1] : strikes.size()))
                .toList();
    }

    private Stream<Apart> split(Stretch recording) {
        return IntStream.rangeClosed(recording.from + FEWEST_STRIKES, recording.to - FEWEST_STRIKES)
                .mapToObj(at -> Apart.of(part(recording.from, at), part(at, recording.to)));
    }

    private static Optional<Apart> furthest(Stream<Apart> pairs, double times) {
        return pairs.filter(pair -> pair.beyond(times) > 1).max(Comparator.comparingDouble(pair -> pair.beyond(times)));
    }

    /** How far two parts lie apart. */
    private record Apart(Part first, Part second, double db, double byChanceDb) {

        static Apart of(Part first, Part second) {
            return new Apart(
                    first,
                    second,
                    apartDb(first.spectrumDb, second.spectrumDb),
                    Math.sqrt(first.varianceDb2 + second.varianceDb2));
        }

        /** The distance as a multiple of what is allowed. */
        double beyond(double times) {
            return db / Math.max(LEAST_DB, times * byChanceDb);
        }

        /** What is the matter, and what both kinds of parts have in common. */
        String words(String parts) {
            return String.format(
                    Locale.ROOT,
                    "%s sound like two bodies, two set-ups or two places struck: their spectra lie %.1f dB apart, where the scatter of"
                            + " strikes explains %.1f dB; resonances fitted to both may be those of neither",
                    parts,
                    db,
                    byChanceDb);
        }
    }

    private static String ofRecordings(Apart apart) {
        String parts = "recordings " + apart.first.recording() + " and " + apart.second.recording();
        return apart.words(parts) + ", so analyse them one by one";
    }

    private String ofOneRecording(Apart apart) {
        String parts = String.format(
                Locale.ROOT,
                "the strikes%s up to %.2f s and those from %.2f s on",
                recordingCount == 1 ? "" : " of recording " + apart.first.recording(),
                apart.first.last.onsetSeconds(),
                apart.second.first.onsetSeconds());
        return apart.words(parts) + ", so tap each body, set-up and place into a recording of its own";
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
