/** The chart package. */
@NullMarked
package io.github.tapwright.chart;

import org.jspecify.annotations.NullMarked;
