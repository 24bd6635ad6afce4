/**
 * The guided sitting: what to set up, what to write down, then the microphone with every strike's verdict as it falls, and
 * at the end a sitting in the archive.
 *
 * <p>A {@link io.github.tapwright.desktop.sitting.Plan} says what a visit is for and how to set it up. The recording goes
 * to the disk as it comes; whatever happens to program or machine, it waits there and is offered again.
 */
@NullMarked
package io.github.tapwright.desktop.sitting;

import org.jspecify.annotations.NullMarked;
