package io.github.tapwright.sitting;

/**
 * One recording of a sitting; its place in the sitting's list is the source number of its strikes.
 *
 * @param original the bytes kept
 * @param fileName the name the maker's file had, without its folder
 * @param facts what reading it showed
 */
public record KeptRecording(Original original, String fileName, SoundFacts facts) {}
