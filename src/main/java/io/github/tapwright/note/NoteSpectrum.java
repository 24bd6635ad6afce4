package io.github.tapwright.note;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.LineShape;
import java.util.Arrays;

/**
 * The exact spectrum of the stretch, from which partials already fitted are taken away.
 *
 * <p>A partial is fitted in what the others leave; so the tails of strong neighbours never lean on a weak one.
 */
final class NoteSpectrum {

    private final double rateHz;
    private final int length;
    private final double[] left;

    /**
     * Transforms a stretch.
     *
     * @param signal samples
     * @param from first sample
     * @param to one past the last; a few samples less are used, so that the transform is quick
     * @param rateHz samples per second
     */
    NoteSpectrum(double[] signal, int from, int to, double rateHz) {
        this.rateHz = rateHz;
        this.length = Fourier.quickLength(to - from);
        this.left = new Fourier(length).forward(Arrays.copyOfRange(signal, from, from + length));
    }

    double binHz() {
        return rateHz / length;
    }

    double seconds() {
        return length / rateHz;
    }

    /** The run of bins within some width of a frequency, at least {@code fewest} of them if the spectrum has them. */
    LineBand band(double hz, double halfWidthHz, int fewest) {
        double half = Math.max(halfWidthHz / binHz(), fewest / 2.0);
        int first = (int) Math.max(1, Math.ceil(hz / binHz() - half));
        int last = (int) Math.min(length / 2.0 - 1, Math.floor(hz / binHz() + half));
        return band(first, Math.max(1, last - first + 1));
    }

    private LineBand band(int first, int bins) {
        double[] rows = new double[2 * bins];
        for (int i = 0; i < bins; i++) {
            rows[i] = left[2 * (first + i)];
            rows[bins + i] = left[2 * (first + i) + 1];
        }
        return new LineBand(first, rows, new LineShape(first, bins, length, rateHz), binHz());
    }

    /** Takes a fitted partial away. */
    void subtract(PartialFit fit, double reachHz) {
        for (int m = 0; m < fit.tones().size(); m++) {
            subtract(fit, m, reachHz);
        }
    }

    /** Takes one sine of a fitted partial away. */
    void subtract(PartialFit fit, int tone, double reachHz) {
        add(fit, tone, reachHz, -1);
    }

    /** Puts a fitted partial back. */
    void restore(PartialFit fit, double reachHz) {
        for (int m = 0; m < fit.tones().size(); m++) {
            add(fit, m, reachHz, 1);
        }
    }

    private void add(PartialFit fit, int tone, double reachHz, double sign) {
        double hz = fit.tones().get(tone).hz();
        int first = (int) Math.max(0, Math.floor((hz - reachHz) / binHz()));
        int last = (int) Math.min(length / 2.0, Math.ceil((hz + reachHz) / binHz()));
        int bins = last - first + 1;
        double[][] columns = fit.tones().get(tone).columns(new LineShape(first, bins, length, rateHz));
        for (int i = 0; i < bins; i++) {
            left[2 * (first + i)] += sign * fit.value(tone, columns, i);
            left[2 * (first + i) + 1] += sign * fit.value(tone, columns, bins + i);
        }
    }
}
