package io.github.tapwright.note.run;

import io.github.tapwright.recording.Excerpts.Span;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.signal.ChannelReader;
import io.github.tapwright.signal.Decimator;
import java.util.ArrayList;
import java.util.List;

/**
 * A recording of many notes, read once to find where each begins and how long it may be listened to.
 *
 * @param attacksSeconds when each note begins
 * @param durationSeconds length of the recording
 * @param channelUsed which channel was listened to, from 0
 */
public record RunTrack(List<Double> attacksSeconds, double durationSeconds, int channelUsed) {

    private static final double TARGET_RATE_HZ = 16_000;
    /** Up to 4.8 kHz or more; what lies above counts too, but need not count exactly. */
    private static final double INTACT = 0.3;

    private static final double BEFORE_SECONDS = 0.02;
    private static final double GUARD_SECONDS = 0.012;

    /** Keeps a copy of the list. */
    public RunTrack {
        attacksSeconds = List.copyOf(attacksSeconds);
    }

    /**
     * Reads a recording; of several channels the one with the most energy is listened to.
     *
     * @param stream read to its end, not closed
     * @return the attacks
     */
    public static RunTrack read(SampleStream stream) {
        double rate = stream.sampleRate().hertz();
        int factor = (int) Math.max(1, Math.floor(rate / TARGET_RATE_HZ));
        ChannelReader.Loudest<RunChannel> chosen = ChannelReader.loudest(
                stream, () -> new RunChannel(new Decimator(rate, factor, INTACT * rate / factor)));
        return new RunTrack(
                AttackFinder.find(chosen.channel().signal(), rate / factor),
                stream.sampleRate().seconds(chosen.samples()),
                chosen.index());
    }

    /**
     * What to listen to of each note: from a moment before its attack to a moment before the next.
     *
     * @param longestSeconds at most so much of each
     * @return one for each attack, in order
     */
    public List<Span> spans(double longestSeconds) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < attacksSeconds.size(); i++) {
            double from = Math.max(0, attacksSeconds.get(i) - BEFORE_SECONDS);
            double next = i + 1 < attacksSeconds.size()
                    ? attacksSeconds.get(i + 1) - BEFORE_SECONDS - GUARD_SECONDS
                    : durationSeconds;
            spans.add(new Span(from, Math.max(from + GUARD_SECONDS, Math.min(next, from + longestSeconds))));
        }
        return spans;
    }
}
