package io.github.tapwright.comparison.listening;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.Stretch;
import java.util.Arrays;
import java.util.List;

/** Cuts sounds to one length, so that none gives itself away by its end, and lets each fade in and out alike. */
final class EqualLength {

    private static final double LONGEST_SECONDS = 5;
    private static final double SHORTEST_SECONDS = 0.5;
    private static final double FADE_IN_SECONDS = 0.005;
    private static final double FADE_OUT_SECONDS = 0.1;

    private EqualLength() {}

    static List<Recording> of(List<Stretch> stretches, List<Recording> cuts) {
        double rate = cuts.get(0).sampleRate().hertz();
        for (int i = 0; i < cuts.size(); i++) {
            Recording cut = cuts.get(i);
            if (cut.sampleRate().hertz() != rate) {
                throw new RefusedEntryException("these sounds were recorded at " + Math.round(rate) + " and "
                        + Math.round(cut.sampleRate().hertz())
                        + " samples a second, and the change of rate alone could be heard; choose sounds of one rate");
            }
            if (cut.length() < SHORTEST_SECONDS * rate) {
                throw new RefusedEntryException(stretches.get(i).words()
                        + " is shorter than half a second, too short to be matched in loudness;"
                        + " choose another sound");
            }
        }
        int length = (int) Math.min(
                LONGEST_SECONDS * rate,
                cuts.stream().mapToInt(Recording::length).min().orElse(0));
        return cuts.stream().map(c -> faded(c, length)).toList();
    }

    private static Recording faded(Recording cut, int length) {
        double rate = cut.sampleRate().hertz();
        double[] samples = Arrays.copyOf(cut.channel(0), length);
        int in = (int) (FADE_IN_SECONDS * rate);
        int out = (int) (FADE_OUT_SECONDS * rate);
        for (int n = 0; n < in; n++) {
            samples[n] *= raised((n + 0.5) / in);
        }
        for (int n = 0; n < out; n++) {
            samples[length - 1 - n] *= raised((n + 0.5) / out);
        }
        return Recording.of(cut.sampleRate(), samples);
    }

    private static double raised(double share) {
        return 0.5 - 0.5 * Math.cos(Math.PI * share);
    }
}
