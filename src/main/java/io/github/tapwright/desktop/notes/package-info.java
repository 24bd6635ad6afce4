/**
 * Notes over the fingerboard: maps of level, decay, pitch and colour, the partials of a note, and its sound; plucks of
 * the open strings with their means.
 */
@NullMarked
package io.github.tapwright.desktop.notes;

import org.jspecify.annotations.NullMarked;
