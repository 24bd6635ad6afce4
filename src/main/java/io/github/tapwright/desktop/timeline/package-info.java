/** How one instrument changed over time: figures in a common air, the climate below, what was done to it, and in words. */
@NullMarked
package io.github.tapwright.desktop.timeline;

import org.jspecify.annotations.NullMarked;
