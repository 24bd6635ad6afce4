package io.github.tapwright.chart;

import org.jfree.chart.JFreeChart;

/** A picture laid out and ready to be drawn. */
interface Drawing {

    /** Width of every picture, pixels. */
    int WIDTH = 1040;

    /** Height, pixels. */
    int height();

    JFreeChart chart();
}
