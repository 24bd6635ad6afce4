/**
 * Sittings, and what one can do with them.
 *
 * <p>A sitting is one visit of an instrument to the microphone: the conditions, the recordings, and what was
 * found in them. It is made for one {@link io.github.tapwright.sitting.Procedure}: taps on the body, a run of
 * notes, or plucks of the open strings; its {@link io.github.tapwright.sitting.Findings} are of that kind. The use cases are small classes with one public method each
 * ({@link io.github.tapwright.sitting.AddSitting}, {@link io.github.tapwright.sitting.NameResonance} and so
 * on). What they need from outside they declare here as interfaces:
 * {@link io.github.tapwright.sitting.InstrumentStore}, {@link io.github.tapwright.sitting.SittingStore} and
 * {@link io.github.tapwright.sitting.CalibrationStore} keep things,
 * {@link io.github.tapwright.sitting.RecordingSource} opens sound files. Whoever starts the program
 * joins the two sides by constructor.
 *
 * <p>A condition nobody wrote down is unknown and stays visibly so. Results are never replaced: a better method
 * adds an analysis beside the old one, and a name the maker gave outlives both.
 */
@NullMarked
package io.github.tapwright.sitting;

import org.jspecify.annotations.NullMarked;
