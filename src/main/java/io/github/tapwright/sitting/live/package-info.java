/**
 * Recording live: from a microphone to a sitting, with nothing lost on the way and the strikes told as they come.
 *
 * <p>{@link io.github.tapwright.sitting.live.RecordLive} joins a {@link io.github.tapwright.sitting.live.LiveInput}
 * (a sound card) with a {@link io.github.tapwright.sitting.live.CaptureStore} (where sound goes to disk as it comes).
 * While it runs, {@link io.github.tapwright.sitting.live.FollowTaps} tells each strike's verdict and the growing
 * response curve. That is a view while the maker works: the numbers that are kept come from the ordinary analysis
 * of the kept recording. {@link io.github.tapwright.sitting.live.KeepCapture} makes a sitting of a finished
 * recording, or of one that a crash left behind.
 */
@NullMarked
package io.github.tapwright.sitting.live;

import org.jspecify.annotations.NullMarked;
