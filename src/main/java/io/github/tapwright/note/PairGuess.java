package io.github.tapwright.note;

import io.github.tapwright.signal.OrthonormalBasis;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.complex.Complex;

/**
 * Two decaying sines of one band by linear least squares alone, so near the best that a step or two of refining ends there.
 *
 * <p>Over x, the distance from the band's middle in half widths, two lines above a straight line are a ratio of polynomials:
 * y = (n₀ + n₁x + n₂x² + n₃x³) / (d₀ + d₁x + x²). Times the denominator, the equation is linear in all its numbers. Its rows
 * are divided by the denominator of a double pole where the single sine stands, or the far bins, where only noise is, would count most. The
 * zeros of the denominator are the poles, (ω + iσ)/2π on the scale of x. Sources: [Levy1959], [SanathananKoerner1963].
 */
final class PairGuess {

    private static final int NUMERATOR = 4;
    private static final int NUMBERS = NUMERATOR + 2;

    private PairGuess() {}

    /** Frequencies between −1 and 1, and poles above them. */
    private record Scale(double middleHz, double halfHz) {

        static Scale of(LineBand band) {
            return new Scale((band.highHz() + band.lowHz()) / 2, (band.highHz() - band.lowHz()) / 2);
        }

        double x(double hz) {
            return (hz - middleHz) / halfHz;
        }

        Complex pole(DecayingTone tone) {
            return new Complex(x(tone.hz()), tone.widthHz() / (2 * halfHz));
        }

        Stream<DecayingTone> tone(Complex pole) {
            return pole.getImaginary() > 0 && Math.abs(pole.getReal()) <= 1
                    ? Stream.of(DecayingTone.of(
                            middleHz + halfHz * pole.getReal(), 2 * Math.PI * halfHz * pole.getImaginary()))
                    : Stream.empty();
        }
    }

    /**
     * Guesses.
     *
     * @param one the best single sine of the band
     * @return two sines, empty if the two poles do not both decay within the band
     */
    static Optional<List<DecayingTone>> of(PartialFit one) {
        Scale scale = Scale.of(one.band());
        double[][] columns = new double[NUMBERS][];
        double[] right = equations(one.band(), scale, scale.pole(one.tones().get(0)), columns);
        OrthonormalBasis basis = new OrthonormalBasis(2 * NUMBERS);
        for (double[] column : columns) {
            basis.add(column);
            basis.add(timesI(column));
        }
        double[] found = basis.solve(basis.takeAway(right));
        Complex d0 = new Complex(found[2 * NUMERATOR], found[2 * NUMERATOR + 1]);
        Complex d1 = new Complex(found[2 * NUMERATOR + 2], found[2 * NUMERATOR + 3]);
        Complex root = d1.square().subtract(d0.multiply(4)).sqrt();
        List<DecayingTone> pair = Stream.of(
                        root.subtract(d1).divide(2), root.add(d1).divide(-2))
                .flatMap(scale::tone)
                .toList();
        return pair.size() == 2 ? Optional.of(pair) : Optional.empty();
    }

    /** Fills the columns n₀ … n₃, d₀, d₁ and gives the right side, x²·y; real parts first, imaginary parts after them. */
    private static double[] equations(LineBand band, Scale scale, Complex pole, double[][] columns) {
        int bins = band.bins();
        double[] rows = band.rows();
        for (int k = 0; k < NUMBERS; k++) {
            columns[k] = new double[2 * bins];
        }
        double[] right = new double[2 * bins];
        for (int i = 0; i < bins; i++) {
            double x = scale.x(band.hz(i));
            Complex weight = new Complex(x).subtract(pole).square().reciprocal();
            Complex y = new Complex(rows[i], rows[bins + i]).multiply(weight);
            Complex power = weight;
            for (int k = 0; k < NUMERATOR; k++) {
                put(columns[k], i, power);
                power = power.multiply(x);
            }
            put(columns[NUMERATOR], i, y.negate());
            put(columns[NUMERATOR + 1], i, y.multiply(-x));
            put(right, i, y.multiply(x * x));
        }
        return right;
    }

    private static void put(double[] column, int bin, Complex value) {
        column[bin] = value.getReal();
        column[column.length / 2 + bin] = value.getImaginary();
    }

    private static double[] timesI(double[] column) {
        int bins = column.length / 2;
        double[] turned = new double[column.length];
        for (int i = 0; i < bins; i++) {
            turned[i] = -column[bins + i];
            turned[bins + i] = column[i];
        }
        return turned;
    }
}
