package io.github.tapwright.note;

/**
 * A decaying sine with its strength: cosine·exp(−σt)·cos(ωt) + sine·exp(−σt)·sin(ωt).
 *
 * @param tone frequency and decay
 * @param cosine strength of the cosine at the beginning of the stretch, re full scale
 * @param sine strength of the sine
 */
record SoundingTone(DecayingTone tone, double cosine, double sine) {}
