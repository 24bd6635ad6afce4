package io.github.tapwright.recording;

import java.util.Arrays;
import java.util.Iterator;
import java.util.List;

/** Cuts excerpts out of a stream while it goes by, so that a long recording never lies in memory whole. */
public final class Excerpts implements Iterator<Recording> {

    private static final int BLOCK = 8192;

    private final SampleStream stream;
    private final Iterator<Span> spans;
    private final double[][] block;
    private long position;
    private int filled;
    private int used;

    /**
     * Prepares to cut; nothing is read before the first excerpt is asked for.
     *
     * @param stream read as far as the span asked for last, not closed
     * @param spans in order, none beginning before the one before it ends
     */
    public Excerpts(SampleStream stream, List<Span> spans) {
        this.stream = stream;
        this.spans = List.copyOf(spans).iterator();
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

    @Override
    public boolean hasNext() {
        return spans.hasNext();
    }

    /**
     * Reads on to the end of the next span.
     *
     * @return its samples, all channels; shorter, or none, where the sound ends early
     * @throws IllegalArgumentException if spans overlap
     */
    @Override
    public Recording next() {
        return cut(spans.next());
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
        for (int c = 0; c < kept.length && length < kept[c].length; c++) {
            kept[c] = Arrays.copyOf(kept[c], length);
        }
        return Recording.holding(stream.sampleRate(), kept);
    }

    private boolean refill() {
        if (used == filled) {
            filled = stream.read(block);
            used = 0;
        }
        return filled > 0;
    }
}
