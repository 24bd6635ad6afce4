package io.github.tapwright.chart;

/**
 * Response curves drawn for a window, with what is needed to find one's way on them.
 *
 * @param raster the pixels
 * @param window what they show
 * @param left left edge of the plot inside the axes, in the units the size was given in
 * @param top its upper edge
 * @param width its width
 * @param height its height
 */
public record CurveSheet(Raster raster, CurveWindow window, double left, double top, double width, double height) {

    /**
     * The frequency under a place.
     *
     * @param x in the units the size was given in
     * @return Hz; beyond the edges the axis goes on
     */
    public double frequencyHzAt(double x) {
        return window.lowHz() * Math.pow(window.highHz() / window.lowHz(), (x - left) / width);
    }

    /**
     * The level under a place.
     *
     * @param y in the units the size was given in, from the top
     * @return dB; beyond the edges the axis goes on
     */
    public double levelDbAt(double y) {
        return window.highDb() - (y - top) / height * (window.highDb() - window.lowDb());
    }

    /**
     * Whether a place lies inside the axes.
     *
     * @param x in the units the size was given in
     * @param y likewise, from the top
     * @return true inside
     */
    public boolean holds(double x, double y) {
        return x >= left && x <= left + width && y >= top && y <= top + height;
    }
}
