package io.github.tapwright.level.loudness;

/**
 * How the sound reached the place of the microphone.
 *
 * <p>A guitar heard at a metre or two in a damped room is nearer to the free field. Source: [ISO532-1].
 */
public enum SoundField {
    /** From the front, without reflections. */
    FREE,
    /** From everywhere alike. */
    DIFFUSE
}
