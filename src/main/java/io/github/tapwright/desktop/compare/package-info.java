/**
 * Is it really different? Two sittings side by side, or groups of instruments; whether they may be compared stands on top,
 * the words come before the figures, and every instrument's own point can be seen.
 */
@NullMarked
package io.github.tapwright.desktop.compare;

import org.jspecify.annotations.NullMarked;
