/**
 * Numbers that know how sure they are.
 *
 * <p>Every measured quantity is an {@link io.github.tapwright.statistics.Estimate}: a value, its standard
 * uncertainty (one standard deviation of what the value might be, as the GUM defines it) and the degrees
 * of freedom behind that uncertainty, from which an interval of any coverage follows.
 */
@NullMarked
package io.github.tapwright.statistics;

import org.jspecify.annotations.NullMarked;
