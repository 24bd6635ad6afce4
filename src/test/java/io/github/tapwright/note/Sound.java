package io.github.tapwright.note;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;

/** Samples as a stream. */
final class Sound {

    private Sound() {}

    static SampleStream of(double rateHz, double[]... channels) {
        return Recording.of(new SampleRate(rateHz), channels).stream();
    }
}
