package io.github.tapwright.level.loudness;

/**
 * The loudness of a recording, method of Zwicker, for sounds that change and as if it were steady. Source:
 * [ISO532-1].
 *
 * @param maximumSone largest loudness at any time, values every 2 ms
 * @param exceededFivePercentSone N5: loudness exceeded 5 % of the time (95th percentile, linear interpolation)
 * @param exceededFivePercentPhon loudness level of N5
 * @param steady loudness of a steady sound with the recording's mean band levels
 * @param field how the sound reached the microphone
 */
public record HeardLoudness(
        double maximumSone,
        double exceededFivePercentSone,
        double exceededFivePercentPhon,
        Loudness steady,
        SoundField field)
        implements LoudnessResult {}
