package io.github.tapwright.recording;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;

/** Cuts excerpts out of a stream while it goes by, so that a long recording never lies in memory whole. */
public final class Excerpts {

    private static final int BLOCK = 8192;

    private final SampleStream stream;
    private final double[][] block;
    private long position;
    private int filled;
    private int used;

    private Excerpts(SampleStream stream) {
        this.stream = stream;
        this.block = new double[stream.channelCount()][BLOCK];
    }

    /**
     * A stretch of time.
     *
     * @param fromSeconds start, 0 or more
     * @param toSeconds end, after the start
     */
    public record Span(double fromSeconds, double toSeconds) {

        /** Refuses spans that are none. */
        public Span {
            if (!(fromSeconds >= 0) || !(toSeconds > fromSeconds)) {
                throw new IllegalArgumentException("no span of time: " + fromSeconds + " to " + toSeconds + " s");
            }
        }
    }

    /**
     * Cuts.
     *
     * @param stream read as far as the last span, not closed
     * @param spans in order, none beginning before the one before it ends
     * @param taker gets the number of each span and its samples, all channels; shorter where the sound ends early
     * @throws IllegalArgumentException if spans overlap
     */
    public static void each(SampleStream stream, List<Span> spans, BiConsumer<Integer, Recording> taker) {
        Excerpts excerpts = new Excerpts(stream);
        for (int i = 0; i < spans.size(); i++) {
            taker.accept(i, excerpts.cut(spans.get(i)));
        }
    }

    private Recording cut(Span span) {
        double rate = stream.sampleRate().hertz();
        long from = Math.round(span.fromSeconds() * rate);
        long to = Math.round(span.toSeconds() * rate);
        if (from < position) {
            throw new IllegalArgumentException("spans must follow each other, one begins at " + span.fromSeconds()
                    + " s, where " + position / rate + " s were already read");
        }
        double[][] kept = new double[block.length][(int) (to - from)];
        int length = 0;
        while (position < to && refill()) {
            long skip = Math.min(Math.max(0, from - position), filled - used);
            int take = (int) Math.min(filled - used - skip, to - position - skip);
            for (int c = 0; c < block.length && take > 0; c++) {
                System.arraycopy(block[c], used + (int) skip, kept[c], length, take);
            }
            length += Math.max(0, take);
            used += (int) skip + Math.max(0, take);
            position += skip + Math.max(0, take);
        }
        for (int c = 0; c < kept.length; c++) {
            kept[c] = Arrays.copyOf(kept[c], length);
        }
        return Recording.of(stream.sampleRate(), kept);
    }

    private boolean refill() {
        if (used == filled) {
            filled = stream.read(block);
            used = 0;
        }
        return filled > 0;
    }
}
