package io.github.tapwright.chart;

import java.util.List;

/**
 * What a picture of response curves shows.
 *
 * @param title what was measured
 * @param subtitles lines below the title: strikes, resolution, conditions
 * @param traces the curves, at least one; the first is drawn on top
 */
public record ResponsePicture(String title, List<String> subtitles, List<Trace> traces) implements Picture {

    /** Refuses a picture of nothing. */
    public ResponsePicture {
        subtitles = List.copyOf(subtitles);
        traces = List.copyOf(traces);
        if (traces.isEmpty()) {
            throw new IllegalArgumentException("a picture needs a curve");
        }
    }

    double lowHz() {
        return traces.stream()
                .mapToDouble(t -> t.curve().points().get(0).frequencyHz())
                .min()
                .orElseThrow();
    }

    double highHz() {
        return traces.stream()
                .mapToDouble(t ->
                        t.curve().points().get(t.curve().points().size() - 1).frequencyHz())
                .max()
                .orElseThrow();
    }

    double lowestLevelDb() {
        return traces.stream()
                .flatMap(t -> t.curve().points().stream())
                .mapToDouble(p -> p.levelDb())
                .min()
                .orElseThrow();
    }
}
