/**
 * A run of plucked notes: where each begins, which string and fret it was, and which dies away too fast.
 *
 * <p>A maker records the fingerboard in one go, string by string. Notes are found by their attack, given to string
 * and fret by pitch and by the order in which hands move, and every note's decay is held against its neighbours on
 * the same string: a wolf or dead note decays much faster than the frets around it.
 */
@NullMarked
package io.github.tapwright.note.run;

import org.jspecify.annotations.NullMarked;
