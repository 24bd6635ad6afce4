/**
 * The coupled body of an instrument from its sittings: hole open, hole covered, a mass on the bridge.
 *
 * <p>The physics is in {@link io.github.tapwright.mode.body}; here sittings become its readings, companions are
 * found, and what comes out is held against the notes of the scale.
 */
@NullMarked
package io.github.tapwright.comparison.body;

import org.jspecify.annotations.NullMarked;
