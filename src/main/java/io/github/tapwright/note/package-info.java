/**
 * Plucked notes: pitch, partials, stretch of the string's series, and how long everything rings.
 *
 * <p>A plucked string is a sum of partials that lie a little sharp of whole multiples, because the string is
 * stiff. Each partial is one decaying sine, or two where the string swings in two planes that the bridge damps
 * differently. All of it is fitted on exact spectra of the recorded stretch, so that a short recording costs
 * certainty and never truth. What a recording does not carry is a typed refusal with its reason.
 */
@NullMarked
package io.github.tapwright.note;

import org.jspecify.annotations.NullMarked;
