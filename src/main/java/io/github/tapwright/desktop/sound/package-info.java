/**
 * Sound made heard, on any screen: at a low level to begin with, and not before a caution about loudness was read.
 */
@NullMarked
package io.github.tapwright.desktop.sound;

import org.jspecify.annotations.NullMarked;
