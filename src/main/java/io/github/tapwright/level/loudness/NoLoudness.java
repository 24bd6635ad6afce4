package io.github.tapwright.level.loudness;

/**
 * No loudness, and why.
 *
 * @param reason one line for the maker: what is missing and what to do
 */
public record NoLoudness(String reason) implements LoudnessResult {}
