/**
 * Blind listening as it is kept: which sounds, how they were made equally loud, the seed of the order, and every answer
 * as it came. The test itself lies in comparison.listening.
 */
@NullMarked
package io.github.tapwright.sitting.listening;

import org.jspecify.annotations.NullMarked;
