package io.github.tapwright.audio;

import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.Loss;
import io.github.tapwright.sitting.live.RunningInput;
import io.github.tapwright.sitting.live.SoundBlock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.TargetDataLine;

/**
 * A line that is being read. Its thread does nothing but fetch samples and hand them on through a queue of half a
 * minute, so that a slow disk or a busy analysis costs no sample; if even that runs full, what is lost is counted.
 */
final class LineReading implements RunningInput {

    private static final double BLOCK_SECONDS = 0.02;
    private static final double QUEUE_SECONDS = 30;
    private static final long PATIENCE_MILLIS = 1000;

    private final String device;
    private final LiveFormat format;
    private final TargetDataLine line;
    private final BlockingQueue<SoundBlock> queue;
    private final LossWatch watch;
    private final List<Loss> losses = new ArrayList<>();
    private final Thread reader;
    private volatile boolean stopping;
    private volatile boolean ended;
    private long framesRead;
    private long framesHandedOn;
    private long droppedFrames;

    /** Where the system heeds priorities at all, reading goes before everything that can wait. */
    @SuppressWarnings("ThreadPriorityCheck")
    LineReading(String device, TargetDataLine line, LiveFormat format) {
        this.device = device;
        this.format = format;
        this.line = line;
        this.queue = new ArrayBlockingQueue<>((int) Math.ceil(QUEUE_SECONDS / BLOCK_SECONDS));
        this.watch = new LossWatch(format, line.getBufferSize() / format.frameBytes());
        this.reader = new Thread(this::read, "tapwright-sound-card");
        reader.setDaemon(true);
        reader.setPriority(Thread.MAX_PRIORITY);
        line.start();
        reader.start();
    }

    private void read() {
        byte[] buffer = new byte[((int) (BLOCK_SECONDS * format.rateHz())) * format.frameBytes()];
        try {
            while (!stopping) {
                int count = line.read(buffer, 0, buffer.length);
                if (count <= 0) {
                    break; // unplugged, or closed because it hung
                }
                handOn(Arrays.copyOf(buffer, count - count % format.frameBytes()));
            }
            handOnTheRest();
        } finally {
            noteDropped();
            ended = true;
            line.close();
        }
    }

    private void handOn(byte[] bytes) {
        SoundBlock block = new SoundBlock(format, bytes);
        framesRead += block.frames();
        watch.look(System.nanoTime(), framesRead, line.available() / format.frameBytes())
                .ifPresent(this::add);
        if (!queue.offer(block)) {
            droppedFrames += block.frames();
        } else {
            noteDropped();
            framesHandedOn += block.frames();
        }
    }

    /** What the line had ready when it was told to stop. */
    private void handOnTheRest() {
        int ready = line.isOpen() ? line.available() : 0;
        byte[] rest = new byte[ready - ready % format.frameBytes()];
        if (rest.length > 0) {
            int count = Math.max(0, line.read(rest, 0, rest.length));
            handOn(Arrays.copyOf(rest, count - count % format.frameBytes()));
        }
    }

    private void noteDropped() {
        if (droppedFrames > 0) {
            double at = (double) framesHandedOn / format.rateHz();
            add(new Loss(at, droppedFrames, "the disk was too slow to take it; record to another disk"));
            droppedFrames = 0;
        }
    }

    private void add(Loss loss) {
        synchronized (losses) {
            losses.add(loss);
        }
    }

    @Override
    public String device() {
        return device;
    }

    @Override
    public LiveFormat format() {
        return format;
    }

    @Override
    public Optional<SoundBlock> next(Duration patience) throws InterruptedException {
        return Optional.ofNullable(queue.poll(patience.toMillis(), TimeUnit.MILLISECONDS));
    }

    @Override
    public boolean isOver() {
        return ended && queue.isEmpty();
    }

    @Override
    public List<Loss> losses() {
        synchronized (losses) {
            return List.copyOf(losses);
        }
    }

    @Override
    public void close() {
        stopping = true;
        try {
            reader.join(PATIENCE_MILLIS);
            if (!ended) {
                line.close(); // a line that gives nothing keeps its reader waiting
                reader.join(PATIENCE_MILLIS);
            }
        } catch (InterruptedException e) {
            line.close();
            Thread.currentThread().interrupt();
        }
    }
}
