package io.github.tapwright.sitting;

/**
 * What the maker wrote down about a sitting and can correct.
 *
 * @param takenAt when the recordings were made
 * @param conditions all besides
 */
public record WrittenDown(Moment takenAt, Conditions conditions) {}
