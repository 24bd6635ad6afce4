/**
 * Numbers that know how sure they are, and what may be said from a few of them.
 *
 * <p>Every measured quantity is an {@link io.github.tapwright.statistics.Estimate}: a value, its standard
 * uncertainty (one standard deviation of what the value might be, as the GUM defines it) and the degrees
 * of freedom behind that uncertainty, from which an interval of any coverage follows.
 *
 * <p>A workshop has five instruments of a kind, not five hundred. So probabilities are counted rather than approximated where that is
 * feasible, intervals use Student's t, and each answer says how it was reached. A value counts once: many taps of one set-up tell
 * about that set-up, many sittings of one instrument about that instrument ({@link io.github.tapwright.statistics.MixedModel}).
 */
@NullMarked
package io.github.tapwright.statistics;

import org.jspecify.annotations.NullMarked;
