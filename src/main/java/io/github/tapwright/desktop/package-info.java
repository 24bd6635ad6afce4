/**
 * The desktop: the bench in a window.
 *
 * <p>{@link io.github.tapwright.desktop.Launch} starts it, {@link io.github.tapwright.desktop.OpenDesk} joins archive,
 * sound and use cases by constructor, and {@link io.github.tapwright.desktop.Shell} puts the screens side by side. Each
 * screen has a package of its own with an XxxModel, which knows the use cases and no controls, and an XxxView, which
 * knows the controls and computes nothing. Screens do not know each other; where one leads to another, the shell hands
 * it what to call. The numbers are those of the command line, because both call the same use cases.
 */
@NullMarked
package io.github.tapwright.desktop;

import org.jspecify.annotations.NullMarked;
