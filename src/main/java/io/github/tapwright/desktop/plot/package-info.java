/**
 * Pictures in a window: {@link io.github.tapwright.desktop.plot.PicturePane} shows one as it is,
 * {@link io.github.tapwright.desktop.plot.CurvePane} lets a reader move about in response curves. The chart package draws
 * pixels; this package shows them and listens to mouse and keyboard.
 */
@NullMarked
package io.github.tapwright.desktop.plot;

import org.jspecify.annotations.NullMarked;
