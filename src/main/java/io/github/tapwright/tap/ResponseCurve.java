package io.github.tapwright.tap;

import java.util.List;

/**
 * How strongly the body answers at each frequency, the strength of the taps taken out.
 *
 * @param points evenly spaced in frequency, lowest first; 0 dB is the highest point of the mean curve
 * @param resolutionHz the true resolution: the half-power width a pure, undamped tone would show, not the
 *     spacing of the points
 * @param strikeCount how many strikes were averaged
 */
public record ResponseCurve(List<Point> points, double resolutionHz, int strikeCount) {

    /** Keeps a copy of the points. */
    public ResponseCurve {
        points = List.copyOf(points);
    }

    /**
     * One point of the curve. The band is the 95 % interval of the mean over the used strikes; a single
     * strike has no spread, and then both edges equal the level.
     *
     * @param frequencyHz where
     * @param levelDb mean over the used strikes, dB re the highest point of the mean curve
     * @param lowerDb lower edge of the band, same reference
     * @param upperDb upper edge of the band, same reference
     */
    public record Point(double frequencyHz, double levelDb, double lowerDb, double upperDb) {}
}
