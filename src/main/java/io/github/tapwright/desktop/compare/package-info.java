/**
 * Is it really different? Two sittings against each other: first whether the conditions allow it, then every resonance with
 * its difference, the 95 % interval and a verdict in plain words, the curves laid over each other; where the conditions
 * forbid it, only with the maker's own reason, which stays in sight. And groups of instruments against each other, by
 * construction or kind, with every instrument's point to be seen.
 */
@NullMarked
package io.github.tapwright.desktop.compare;

import org.jspecify.annotations.NullMarked;
