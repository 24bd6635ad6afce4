package io.github.tapwright.note.run;

import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.Optional;

/**
 * Points out notes that decay much faster than their neighbours on the same string.
 *
 * <p>The neighbours within {@value #REACH} frets are joined by a robust line (Theil and Sen's median of slopes) of the
 * logarithm of decay time over fret. A note is pointed out if it lies more than {@value #DEVIATIONS} scaled median absolute
 * deviations (1.4826·MAD) below it, and is at most {@value #SHARE} of it. Sources: [Sen1968]; the factor makes the MAD the
 * standard deviation of a normal distribution [RousseeuwCroux1993].
 */
public final class FastDecays {

    private static final int REACH = 4;
    private static final int FEWEST_NEIGHBOURS = 4;
    private static final double DEVIATIONS = 3.5;
    private static final double SHARE = 0.65;
    private static final double NORMAL = 1.4826;
    private static final double LEAST_SPREAD = 0.05;

    private FastDecays() {}

    /**
     * Finds them.
     *
     * @param decayTimesSeconds decay time of each place that has one, greater than 0
     * @return in the order of the fingerboard; a note with fewer than four neighbours cannot be judged
     */
    public static List<FastDecay> in(Map<Fret, Double> decayTimesSeconds) {
        return decayTimesSeconds.entrySet().stream()
                .sorted(Entry.comparingByKey())
                .filter(note -> canBeJudged(note.getKey(), decayTimesSeconds))
                .flatMap(note -> judge(note, neighbours(note.getKey(), decayTimesSeconds)).stream())
                .toList();
    }

    /**
     * How many notes can be judged at all.
     *
     * @param decayTimesSeconds as for {@link #in}
     * @return those with four neighbours or more
     */
    public static int judged(Map<Fret, Double> decayTimesSeconds) {
        return (int) decayTimesSeconds.keySet().stream()
                .filter(place -> canBeJudged(place, decayTimesSeconds))
                .count();
    }

    /**
     * Whether a note can be judged at all.
     *
     * @param place where
     * @param decayTimesSeconds as for {@link #in}
     * @return true if it has a decay time and four neighbours or more
     */
    public static boolean canBeJudged(Fret place, Map<Fret, Double> decayTimesSeconds) {
        return decayTimesSeconds.containsKey(place)
                && neighbours(place, decayTimesSeconds).size() >= FEWEST_NEIGHBOURS;
    }

    private static List<Entry<Fret, Double>> neighbours(Fret place, Map<Fret, Double> times) {
        return times.entrySet().stream()
                .sorted(Entry.comparingByKey())
                .filter(n -> n.getKey().string() == place.string()
                        && n.getKey().fret() != place.fret()
                        && Math.abs(n.getKey().fret() - place.fret()) <= REACH)
                .toList();
    }

    private static Optional<FastDecay> judge(Entry<Fret, Double> note, List<Entry<Fret, Double>> neighbours) {
        double[] x = neighbours.stream()
                .mapToDouble(n -> n.getKey().fret() - note.getKey().fret())
                .toArray();
        double[] y =
                neighbours.stream().mapToDouble(n -> Math.log(n.getValue())).toArray();
        double slope = medianSlope(x, y);
        double[] rest = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            rest[i] = y[i] - slope * x[i];
        }
        double usual = Median.of(rest);
        for (int i = 0; i < rest.length; i++) {
            rest[i] = Math.abs(rest[i] - usual);
        }
        double spread = Math.max(LEAST_SPREAD, NORMAL * Median.of(rest));
        double here = Math.log(note.getValue());
        double deviations = (usual - here) / spread;
        boolean isFast = deviations > DEVIATIONS && here < usual + Math.log(SHARE);
        return isFast
                ? Optional.of(new FastDecay(note.getKey(), Math.exp(here), Math.exp(usual), deviations))
                : Optional.empty();
    }

    private static double medianSlope(double[] x, double[] y) {
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                slopes.add((y[i] - y[j]) / (x[i] - x[j]));
            }
        }
        return Median.of(slopes.stream().mapToDouble(s -> s).toArray());
    }
}
