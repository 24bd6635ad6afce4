package io.github.tapwright.level.loudness;

/**
 * What the loudness method says about a recording: loudness, or why there is none.
 */
public sealed interface LoudnessResult permits HeardLoudness, NoLoudness {}
