package io.github.tapwright.level.broadcast;

import java.util.OptionalDouble;

/**
 * The loudness of a whole recording against full scale. Sources: [BS1770], [EBU3341], [EBU3342].
 *
 * @param integratedLufs gated loudness; empty if shorter than 400 ms or never above −70 LUFS
 * @param momentaryMaxLufs largest loudness of any 400 ms; empty if shorter or silent
 * @param shortTermMaxLufs largest loudness of any 3 s; empty if shorter or silent
 * @param loudnessRangeLu spread of the 3 s loudness; empty if shorter than 3 s or never above −70 LUFS
 * @param truePeakDb largest value between samples, dB re full scale; empty for silence
 * @param channelWeights how the channels were added
 */
public record ProgrammeLoudness(
        OptionalDouble integratedLufs,
        OptionalDouble momentaryMaxLufs,
        OptionalDouble shortTermMaxLufs,
        OptionalDouble loudnessRangeLu,
        OptionalDouble truePeakDb,
        ChannelWeights channelWeights) {}
