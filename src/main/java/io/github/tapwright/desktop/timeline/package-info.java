/**
 * One instrument over time: its resonances in the air all its sittings have in common and as they were measured, the
 * climate below them, what was done to it, and whether a drift can be told from what setting up again and weather explain.
 */
@NullMarked
package io.github.tapwright.desktop.timeline;

import org.jspecify.annotations.NullMarked;
