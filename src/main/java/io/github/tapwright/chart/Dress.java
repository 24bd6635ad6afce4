package io.github.tapwright.chart;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** What every picture wears: paper, quiet grid, title and lines to the left, legend below. */
final class Dress {

    private Dress() {}

    static void plot(XYPlot plot) {
        plot.setBackgroundPaint(Look.PAPER);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(Look.GRID);
        plot.setDomainGridlineStroke(Look.HAIRLINE);
        plot.setRangeGridlinePaint(Look.GRID);
        plot.setRangeGridlineStroke(Look.HAIRLINE);
        plot.setAxisOffset(new RectangleInsets(0, 4, 4, 0));
    }

    /** A picture without a title stands on a page that says what it shows. */
    static JFreeChart chart(XYPlot plot, String title, List<String> subtitles, boolean legend) {
        JFreeChart chart = new JFreeChart(null, Look.TITLE, plot, false);
        chart.setBackgroundPaint(Look.PAPER);
        chart.setPadding(new RectangleInsets(16, 16, 12, 24));
        if (!title.isEmpty()) {
            chart.addSubtitle(line(title, true));
        }
        subtitles.forEach(text -> chart.addSubtitle(line(text, false)));
        if (legend) {
            chart.addSubtitle(legend(plot));
        }
        return chart;
    }

    /** Figures on an axis, with a true minus sign. */
    static DecimalFormat figures() {
        DecimalFormatSymbols symbols = DecimalFormatSymbols.getInstance(Locale.ROOT);
        symbols.setMinusSign('−');
        return new DecimalFormat("0.###", symbols);
    }

    private static LegendTitle legend(XYPlot plot) {
        LegendTitle legend = new LegendTitle(plot);
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setFrame(BlockBorder.NONE);
        legend.setItemFont(Look.AXIS);
        return legend;
    }

    private static TextTitle line(String text, boolean title) {
        TextTitle line = new TextTitle(text, title ? Look.TITLE : Look.SUBTITLE);
        line.setPaint(title ? Look.INK : Look.QUIET_INK);
        line.setHorizontalAlignment(HorizontalAlignment.LEFT);
        line.setTextAlignment(HorizontalAlignment.LEFT);
        line.setMargin(title ? 0 : 3, 4, 0, 0);
        return line;
    }
}
