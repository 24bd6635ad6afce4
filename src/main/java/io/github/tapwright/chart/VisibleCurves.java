package io.github.tapwright.chart;

import java.util.List;
import org.jfree.data.xy.AbstractIntervalXYDataset;

/** Thinned curves as the chart library wants them, without a copy. */
final class VisibleCurves extends AbstractIntervalXYDataset {

    private static final long serialVersionUID = 1L;

    private final transient List<VisibleCurve> curves;

    VisibleCurves(List<VisibleCurve> curves) {
        this.curves = curves;
    }

    @Override
    public int getSeriesCount() {
        return curves.size();
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return series;
    }

    @Override
    public int getItemCount(int series) {
        return curves.get(series).size();
    }

    @Override
    public double getXValue(int series, int item) {
        return curves.get(series).frequencyHz(item);
    }

    @Override
    public Number getX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public double getYValue(int series, int item) {
        return curves.get(series).levelDb(item);
    }

    @Override
    public Number getY(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public double getStartXValue(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getStartX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public double getEndXValue(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getEndX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public double getStartYValue(int series, int item) {
        return curves.get(series).lowerDb(item);
    }

    @Override
    public Number getStartY(int series, int item) {
        return getStartYValue(series, item);
    }

    @Override
    public double getEndYValue(int series, int item) {
        return curves.get(series).upperDb(item);
    }

    @Override
    public Number getEndY(int series, int item) {
        return getEndYValue(series, item);
    }
}
