package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;

/**
 * A decay time of the whole note, extrapolated to 60 dB.
 *
 * @param range the part of the decay it was read from
 * @param seconds time for 60 dB; its uncertainty covers noise, the unheard end and how crooked the decay is, not other plucks
 * @param nonLinearityPerMille how crooked that part is, 1000·(1−r²); above 10 one number tells little. Source: [ISO3382-2]
 */
public record DecayTime(DecayRange range, Estimate seconds, double nonLinearityPerMille) {}
