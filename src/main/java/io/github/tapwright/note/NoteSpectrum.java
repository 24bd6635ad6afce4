package io.github.tapwright.note;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.signal.LineShape;
import java.util.List;

/**
 * The exact spectrum of the stretch, looked at band by band.
 *
 * <p>A partial is fitted in what the others leave; so the tails of strong neighbours never lean on a weak one. They are taken
 * away where it is looked for and nowhere else, which is a small part of the spectrum.
 */
final class NoteSpectrum {

    private final double rateHz;
    private final int length;
    private final double[] whole;

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
        this.whole = new Fourier(length).forward(signal, from);
    }

    double binHz() {
        return rateHz / length;
    }

    double seconds() {
        return length / rateHz;
    }

    /**
     * The run of bins within some width of a frequency.
     *
     * @param hz its middle
     * @param halfWidthHz how far it reaches to either side
     * @param fewest so many bins at least, if the spectrum has them
     * @param others what is known to sound beside what is looked for; taken away
     * @return the band
     */
    LineBand band(double hz, double halfWidthHz, int fewest, List<SoundingTone> others) {
        double half = Math.max(halfWidthHz / binHz(), fewest / 2.0);
        int first = (int) Math.max(1, Math.ceil(hz / binHz() - half));
        int last = (int) Math.min(length / 2.0 - 1, Math.floor(hz / binHz() + half));
        int bins = Math.max(1, last - first + 1);
        double[] rows = new double[2 * bins];
        for (int i = 0; i < bins; i++) {
            rows[i] = whole[2 * (first + i)];
            rows[bins + i] = whole[2 * (first + i) + 1];
        }
        LineShape shape = new LineShape(first, bins, length, rateHz);
        for (SoundingTone other : others) {
            shape.add(other.tone().omega(), other.tone().sigma(), -other.cosine(), -other.sine(), rows);
        }
        return new LineBand(first, rows, shape, binHz());
    }
}
