package io.github.tapwright.chart;

import org.jfree.chart.JFreeChart;

/** A picture laid out and ready to be drawn. */
interface Drawing {

    /** Width of a picture on a screen of its own, pixels. */
    int SCREEN_WIDTH = 1040;

    /** Height, pixels. */
    int height();

    JFreeChart chart();

    /** Lays a picture out over a width in pixels. */
    static Drawing of(Picture picture, int width) {
        if (picture instanceof ResponsePicture p) {
            return new ResponseChart(p, width);
        }
        if (picture instanceof LevelPicture p) {
            return new LevelChart(p);
        }
        if (picture instanceof FingerboardPicture p) {
            return new FingerboardChart(p, width);
        }
        if (picture instanceof NotePicture p) {
            return new NoteChart(p);
        }
        if (picture instanceof PointsPicture p) {
            return new PointsChart(p);
        }
        return picture instanceof GroupPicture p
                ? new GroupChart(p, width)
                : new TrendChart((TrendPicture) picture, width);
    }
}
