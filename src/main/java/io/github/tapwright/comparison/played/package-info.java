/**
 * Two sittings in which strings were played: how much longer notes ring, how much louder plucks are, and which dead notes came or went.
 *
 * <p>Notes are compared place by place, string 3 fret 5 with string 3 fret 5, so that every string and every note stands against itself. What
 * nobody can compare is the hand: how hard a note was plucked is in its level, and playing the same guitar again moves every figure. Both are
 * in the answer, as a condition and as a part of the uncertainty.
 */
@NullMarked
package io.github.tapwright.comparison.played;

import org.jspecify.annotations.NullMarked;
