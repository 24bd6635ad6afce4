package io.github.tapwright.sitting.live;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** An input that is being listened to; its own thread reads the sound card and does nothing else. */
public interface RunningInput extends AutoCloseable {

    /**
     * What is listened to.
     *
     * @return its {@link InputDevice#name()}
     */
    String device();

    /**
     * How it is read.
     *
     * @return the format of every block
     */
    LiveFormat format();

    /**
     * Waits for the next block.
     *
     * @param patience how long to wait at most
     * @return the block; empty if none came in time, or there will be none
     * @throws InterruptedException if the waiting thread is told to stop
     */
    Optional<SoundBlock> next(Duration patience) throws InterruptedException;

    /**
     * Whether every block was taken and no more will come: closed, unplugged, or at its end.
     *
     * @return true if so
     */
    boolean isOver();

    /**
     * Sound that was lost between the microphone and this input's blocks, as far as it can be told by now.
     *
     * @return in the order of time; empty if nothing was lost
     */
    List<Loss> losses();

    /** Stops listening; blocks heard before can still be taken. */
    @Override
    void close();
}
