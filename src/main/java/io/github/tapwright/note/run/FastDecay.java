package io.github.tapwright.note.run;

/**
 * A note that dies away much faster than its neighbours: a wolf or a dead note.
 *
 * @param place where
 * @param decayTimeSeconds its decay time
 * @param usualSeconds what its neighbours on the string lead one to expect
 * @param deviations how many of their scaled median absolute deviations it lies below
 */
public record FastDecay(Fret place, double decayTimeSeconds, double usualSeconds, double deviations) {}
