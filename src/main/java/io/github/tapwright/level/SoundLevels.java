package io.github.tapwright.level;

/**
 * The sound levels of one channel over its whole length T. Source of the definitions: [IEC61672-1].
 *
 * @param laeq equivalent level, A: 10 lg((1/T)·∫p_A²/p0² dt)
 * @param lceq equivalent level, C
 * @param lzeq equivalent level, Z
 * @param lafMax largest level with time weighting F, A
 * @param lasMax largest level with time weighting S, A
 * @param lae exposure level, A: laeq + 10 lg(T / 1 s)
 * @param lcPeak largest absolute C-weighted sample: 20 lg(max|p_C|/p0)
 * @param durationSeconds T
 */
public record SoundLevels(
        Level laeq,
        Level lceq,
        Level lzeq,
        Level lafMax,
        Level lasMax,
        Level lae,
        Level lcPeak,
        double durationSeconds) {}
