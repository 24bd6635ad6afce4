package io.github.tapwright.chart;

import io.github.tapwright.tap.ResponseCurve;
import java.util.List;

/**
 * One response curve of a picture.
 *
 * @param label what the legend calls it; shown only where there are several curves
 * @param curve mean and 95 % band
 * @param marks resonances to point out on it
 */
public record Trace(String label, ResponseCurve curve, List<Mark> marks) {

    /** Keeps the marks in order of frequency. */
    public Trace {
        marks = marks.stream()
                .sorted((a, b) -> Double.compare(a.frequencyHz(), b.frequencyHz()))
                .toList();
        if (curve.points().isEmpty()) {
            throw new IllegalArgumentException("a curve without points cannot be drawn: " + label);
        }
    }

    /** Level of the curve at a frequency, dB: that of the nearest point, since points lie closer than the line is wide. */
    double levelDbAt(double frequencyHz) {
        return curve.points().stream()
                .min((a, b) -> Double.compare(
                        Math.abs(a.frequencyHz() - frequencyHz), Math.abs(b.frequencyHz() - frequencyHz)))
                .orElseThrow()
                .levelDb();
    }
}
