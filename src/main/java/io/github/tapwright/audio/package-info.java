/**
 * Sound files in and out: what a file holds becomes a
 * {@link io.github.tapwright.recording.SampleStream}, sample for sample.
 *
 * <p>{@link io.github.tapwright.audio.AudioFile} looks at the content of a file, never at its name, and
 * returns {@link io.github.tapwright.audio.OpenedAudio}. Behind it stands one reader for each kind of
 * file, and {@code GuardedSound} around all of them: whatever a damaged file makes a decoder do, the
 * caller sees either samples with a notice or one clear refusal. Nothing is ever resampled, clipped,
 * padded or mixed, and no memory is reserved because a header asked for it.
 */
@NullMarked
package io.github.tapwright.audio;

import org.jspecify.annotations.NullMarked;
