/**
 * One sitting against another: which resonance is which, how far they lie apart, and whether one can tell.
 *
 * <p>The uncertainties of a sitting say how well its own taps agree. Putting the instrument up again moves every
 * figure a little more, so a difference between sittings also carries the
 * {@link io.github.tapwright.comparison.SetUpSpread}. Without it every two sittings would seem to differ.
 */
@NullMarked
package io.github.tapwright.comparison;

import org.jspecify.annotations.NullMarked;
