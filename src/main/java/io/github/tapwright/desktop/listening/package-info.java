/**
 * Blind listening: sounds are chosen and made equally loud, played as A, B and X without saying which is which, and the
 * answers, kept as they come, are held against guessing.
 */
@NullMarked
package io.github.tapwright.desktop.listening;

import org.jspecify.annotations.NullMarked;
