package io.github.tapwright.mode.body;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * From resonances with the hole open and covered back to what the parts would do by themselves.
 *
 * <p>With squares of frequencies, e the elementary symmetric functions of the open ones and c of the covered ones:
 *
 * <pre>
 * f_h²          = e1 − c1                       f_t0² + f_b0² = (e2 − c2)/f_h²       f_t0²·f_b0² = e3/f_h²
 * f_at² + f_ab² = c1 − (f_t0² + f_b0²)          f_at²·f_b0² + f_ab²·f_t0² = c2 − f_t0²·f_b0²
 * </pre>
 *
 * and without a back f_t0² = f−²·f+²/f_h², f_a² = f_closed² − f_t0². A solution exists exactly if each covered
 * resonance lies between two open ones, as the model demands. The equations cannot tell top from back: the lower
 * of the two is taken for the top. Source: derived, exact for the model of [ChristensenVistisen1980] without
 * losses; losses shift f_h by less than a hundredth of a per cent at usual Q.
 */
final class Inversion {

    private final double[] open;
    private final double[] covered;

    private Inversion(List<Double> openHz, List<Double> coveredHz) {
        this.open = squares(openHz);
        this.covered = squares(coveredHz);
    }

    /** Why no body of this model has these resonances; empty if there is one. */
    static Optional<String> contradiction(List<Double> openHz, List<Double> coveredHz) {
        for (int i = 0; i < coveredHz.size(); i++) {
            double covered = coveredHz.get(i);
            if (!(covered > openHz.get(i) && covered < openHz.get(i + 1))) {
                return Optional.of(String.format(
                        Locale.ROOT,
                        "the covered hole's resonance at %.1f Hz lies outside %.1f to %.1f Hz, where the open hole's"
                                + " resonances demand it; check that the cover was tight, that nothing else changed"
                                + " between the sittings, and that the names are right",
                        covered,
                        openHz.get(i),
                        openHz.get(i + 1)));
            }
        }
        return Optional.empty();
    }

    /** The body; two or three open resonances, one covered one fewer, free of {@link #contradiction}. */
    static BodyFrequencies solve(List<Double> openHz, List<Double> coveredHz) {
        Inversion inversion = new Inversion(openHz, coveredHz);
        return coveredHz.size() == 1 ? inversion.rigidBack() : inversion.liveBack();
    }

    private BodyFrequencies rigidBack() {
        double helmholtz = open[0] + open[1] - covered[0];
        double top = open[0] * open[1] / helmholtz;
        return new BodyFrequencies(plate(top, covered[0] - top), Optional.empty(), Math.sqrt(helmholtz));
    }

    private BodyFrequencies liveBack() {
        double c1 = covered[0] + covered[1];
        double c2 = covered[0] * covered[1];
        double helmholtz = open[0] + open[1] + open[2] - c1;
        double sum = (open[0] * open[1] + open[0] * open[2] + open[1] * open[2] - c2) / helmholtz;
        double product = open[0] * open[1] * open[2] / helmholtz;
        // Real for every body; rounding may leave it a hair below zero where top and back agree.
        double apart = Math.sqrt(Math.max(0, sum * sum - 4 * product));
        double top = (sum - apart) / 2;
        double back = (sum + apart) / 2;
        double onTop = (c2 - product - (c1 - sum) * top) / (back - top);
        return new BodyFrequencies(plate(top, onTop), Optional.of(plate(back, c1 - sum - onTop)), Math.sqrt(helmholtz));
    }

    private static PlateFrequencies plate(double alone, double airSpring) {
        return new PlateFrequencies(Math.sqrt(alone), Math.sqrt(airSpring));
    }

    private static double[] squares(List<Double> hz) {
        return hz.stream().mapToDouble(f -> f * f).toArray();
    }
}
