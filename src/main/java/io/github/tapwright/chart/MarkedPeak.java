package io.github.tapwright.chart;

import java.awt.Color;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A mark with its place on its curve.
 *
 * @param mark the mark
 * @param levelDb level of the curve there, dB
 * @param curve which curve, from 0
 */
record MarkedPeak(Mark mark, double levelDb, int curve) {

    /** The marks of all curves, lowest frequency first. */
    static List<MarkedPeak> of(List<Trace> traces) {
        return IntStream.range(0, traces.size())
                .boxed()
                .flatMap(i -> traces.get(i).marks().stream()
                        .map(m -> new MarkedPeak(m, traces.get(i).levelDbAt(m.frequencyHz()), i)))
                .sorted(Comparator.comparingDouble(p -> p.mark().frequencyHz()))
                .toList();
    }

    boolean named() {
        return !mark.name().isEmpty();
    }

    /** The colour of its curve. */
    Color colour() {
        return Look.colour(curve);
    }

    /** Width of its figure, pixels. */
    double figureWidth() {
        return Look.width(Look.FIGURE, mark.figure());
    }
}
