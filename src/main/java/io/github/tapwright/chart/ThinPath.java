package io.github.tapwright.chart;

import java.awt.geom.Path2D;

/**
 * A line through many points, drawn through as few of them as the eye can tell from all: none that is left out lies more
 * than {@link #TOLERANCE} of a unit above or below the line. A smooth curve needs a tenth of its points then, and dashes
 * are laid along far fewer pieces.
 *
 * <p>From the last point kept, the slopes that pass every later point closely enough form an interval; the first point
 * outside it ends the piece.
 */
final class ThinPath {

    /** Units of the drawing, a fifth of a pixel on an ordinary screen. */
    static final double TOLERANCE = 0.2;

    private final Path2D path = new Path2D.Double();
    private double keptX;
    private double keptY;
    private double lastX;
    private double lastY;
    private double lowest;
    private double highest;
    private double direction;
    private boolean pending;

    /** Goes on to a point. */
    void to(double x, double y) {
        if (path.getCurrentPoint() == null) {
            path.moveTo(x, y);
            keep(x, y);
            return;
        }
        if (pending && !passesAlso(x, y)) {
            path.lineTo(lastX, lastY);
            keep(lastX, lastY);
        }
        double run = Math.abs(x - keptX);
        if (run == 0) {
            path.lineTo(x, y);
            keep(x, y);
            return;
        }
        direction = Math.signum(x - keptX);
        lowest = Math.max(lowest, (y - TOLERANCE - keptY) / run);
        highest = Math.min(highest, (y + TOLERANCE - keptY) / run);
        lastX = x;
        lastY = y;
        pending = true;
    }

    private boolean passesAlso(double x, double y) {
        double run = (x - keptX) * direction;
        double slope = (y - keptY) / run;
        return run > (lastX - keptX) * direction && slope >= lowest && slope <= highest;
    }

    private void keep(double x, double y) {
        keptX = x;
        keptY = y;
        lowest = Double.NEGATIVE_INFINITY;
        highest = Double.POSITIVE_INFINITY;
        pending = false;
    }

    /** The line so far, to its last point. */
    Path2D path() {
        if (pending) {
            path.lineTo(lastX, lastY);
            keep(lastX, lastY);
        }
        return path;
    }
}
