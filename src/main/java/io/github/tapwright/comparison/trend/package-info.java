/**
 * One instrument over time: what drifts, what the weather did, what was done to it, and what one may not conclude.
 *
 * <p>A drift is sought only within the stretch since the strings or the stage last changed. It has to stand out from chance and from
 * what setting up again does, and even then says that something changed, not why.
 */
@NullMarked
package io.github.tapwright.comparison.trend;

import org.jspecify.annotations.NullMarked;
