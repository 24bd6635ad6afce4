/**
 * From a recording of several taps to strikes one can trust, and to the response curve they share.
 *
 * <p>A strike is a short contact (a knuckle, a soft hammer) after which the body rings freely. Each strike
 * found gets a verdict: used, or rejected with every reason that holds and the figure behind it.
 */
@NullMarked
package io.github.tapwright.tap;

import org.jspecify.annotations.NullMarked;
