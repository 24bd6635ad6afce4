/**
 * The shelf: every instrument with its construction, its last sitting and a small sketch of how its body answers; search;
 * sound files may be dropped on one.
 */
@NullMarked
package io.github.tapwright.desktop.shelf;

import org.jspecify.annotations.NullMarked;
