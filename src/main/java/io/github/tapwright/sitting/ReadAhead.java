package io.github.tapwright.sitting;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
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
    private static final int AT_ONCE = 8192;

    private final SampleStream source;
    private final double[][] block;
    private final ExecutorService decoder = Executors.newSingleThreadExecutor(ReadAhead::daemon);
    private CompletableFuture<Stretch> next;
    private Stretch current;
    private int used;
    private boolean over;

    /**
     * Begins to decode.
     *
     * @param source read by nobody else until this stream is closed
     */
    ReadAhead(SampleStream source) {
        this.source = source;
        this.block = new double[source.channelCount()][AT_ONCE];
        this.current = new Stretch(source.channelCount());
        this.next = filled(new Stretch(source.channelCount()));
    }

    /** Some sound, and what trouble came after it. Belongs to one of the two threads at a time. */
    private static final class Stretch {

        private final double[][] samples;
        private int count;
        private Optional<Throwable> trouble = Optional.empty();

        Stretch(int channelCount) {
            samples = new double[channelCount][STRETCH];
        }

        /** Reads until there is no room for another block, or no sound; a decoder may give little at a time. */
        Stretch fill(SampleStream source, double[][] block) {
            count = 0;
            try {
                for (int n = AT_ONCE; n > 0 && count + AT_ONCE <= STRETCH; count += n) {
                    n = source.read(block);
                    for (int c = 0; c < block.length; c++) {
                        System.arraycopy(block[c], 0, samples[c], count, n);
                    }
                }
            } catch (RuntimeException | Error e) {
                trouble = Optional.of(e);
            }
            return this;
        }
    }

    /** Reading must not keep the program alive. */
    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "reading ahead");
        thread.setDaemon(true);
        return thread;
    }

    private CompletableFuture<Stretch> filled(Stretch room) {
        return CompletableFuture.supplyAsync(() -> room.fill(source, block), decoder);
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
    public int read(double[][] into) {
        if (used == current.count && !over) {
            goOn();
        }
        if (used == current.count && current.trouble.isPresent()) {
            throw asItWas(current.trouble.orElseThrow());
        }
        int count = Math.min(into[0].length, current.count - used);
        for (int c = 0; c < into.length; c++) {
            System.arraycopy(current.samples[c], used, into[c], 0, count);
        }
        used += count;
        return count;
    }

    private void goOn() {
        Stretch empty = current;
        current = next.join();
        used = 0;
        over = current.count == 0 || current.trouble.isPresent();
        if (!over) {
            next = filled(empty);
        }
    }

    private static RuntimeException asItWas(Throwable trouble) {
        if (trouble instanceof Error error) {
            throw error;
        }
        return (RuntimeException) trouble;
    }

    @Override
    public void close() {
        decoder.shutdown();
        next.join();
        over = true;
    }
}
