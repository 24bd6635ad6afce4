package io.github.tapwright.sitting;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/**
 * A stream that is decoded on a thread of its own while what came before is still worked on: the same samples in the same order.
 *
 * <p>One stretch of sound is decoded beforehand, no more. Trouble with the source is thrown where its samples would have been.
 * Closing ends the thread and leaves the source open.
 */
final class ReadAhead implements SampleStream {

    private static final int STRETCH = 65_536;

    private final SampleStream source;
    private final ExecutorService decoder = Executors.newSingleThreadExecutor(ReadAhead::daemon);
    private CompletableFuture<Decoded> next;
    private Decoded current;
    private int used;
    private boolean over;

    /**
     * Begins to decode.
     *
     * @param source read by nobody else until this stream is closed
     */
    ReadAhead(SampleStream source) {
        this.source = source;
        this.current = new Decoded(room(), 0);
        this.next = decode(room());
    }

    private static final class Decoded {

        private final double[][] samples;
        private final int count;

        Decoded(double[][] samples, int count) {
            this.samples = samples;
            this.count = count;
        }
    }

    /** Reading must not keep the program alive. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "reading ahead");
        thread.setDaemon(true);
        return thread;
    }

    private double[][] room() {
        return new double[source.channelCount()][STRETCH];
    }

    private CompletableFuture<Decoded> decode(double[][] room) {
        return CompletableFuture.supplyAsync(() -> new Decoded(room, source.read(room)), decoder);
    }

    @Override
    public SampleRate sampleRate() {
        return source.sampleRate();
    }

    @Override
    public int channelCount() {
        return source.channelCount();
    }

    @Override
    public int read(double[][] block) {
        if (used == current.count && !over) {
            Decoded read = decoded();
            over = read.count == 0;
            if (!over) {
                next = decode(current.samples);
            }
            current = read;
            used = 0;
        }
        int count = Math.min(block[0].length, current.count - used);
        for (int c = 0; c < block.length; c++) {
            System.arraycopy(current.samples[c], used, block[c], 0, count);
        }
        used += count;
        return count;
    }

    private Decoded decoded() {
        try {
            return next.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw e.getCause() instanceof RuntimeException trouble ? trouble : e;
        }
    }

    @Override
    public void close() {
        decoder.shutdown();
        next.handle((read, trouble) -> over).join();
        over = true;
    }
}
