/**
 * Pictures of results, drawn without a screen: the same picture in a file, in a report and on the desktop.
 *
 * <p>A {@link io.github.tapwright.chart.ResponsePicture} says what to show;
 * {@link io.github.tapwright.chart.ChartFile} draws it as PNG or SVG. Curves differ in colour and in line style,
 * so that they can be told apart in print and by colour-blind readers.
 */
@NullMarked
package io.github.tapwright.chart;

import org.jspecify.annotations.NullMarked;
