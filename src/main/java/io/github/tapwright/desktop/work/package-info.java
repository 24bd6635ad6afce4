/**
 * Work away from the screen: what takes longer than a blink runs in the background, shows how far it is, and can be
 * given up; what it says at the end is a notice on the screen, with a way back where something could be lost.
 */
@NullMarked
package io.github.tapwright.desktop.work;

import org.jspecify.annotations.NullMarked;
