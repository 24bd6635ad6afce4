package io.github.tapwright.chart;

import java.awt.Color;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A mark with its place on the curve and the colour of its curve. */
record MarkedPeak(Mark mark, double levelDb, Color colour) {

    /** The marks of all curves, lowest frequency first. */
    static List<MarkedPeak> of(List<Trace> traces) {
        return IntStream.range(0, traces.size())
                .boxed()
                .flatMap(i -> traces.get(i).marks().stream()
                        .map(m -> new MarkedPeak(m, traces.get(i).levelDbAt(m.frequencyHz()), Look.colour(i))))
                .sorted(Comparator.comparingDouble(p -> p.mark().frequencyHz()))
                .toList();
    }

    boolean named() {
        return !mark.name().isEmpty();
    }

    /** Width of its figure, pixels. */
    double figureWidth() {
        return Look.width(Look.FIGURE, mark.figure());
    }
}
