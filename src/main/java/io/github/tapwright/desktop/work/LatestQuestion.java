package io.github.tapwright.desktop.work;

import java.util.concurrent.atomic.AtomicLong;

/**
 * Tells the question asked last from those before it, whose answers come too late. The screen asks; a job may look while
 * it works, and spare itself what nobody waits for.
 */
public final class LatestQuestion {

    private final AtomicLong latest = new AtomicLong();

    /** Nothing asked yet. */
    public LatestQuestion() {}

    /**
     * Asks another question, or none any more; all before are overtaken.
     *
     * @return its number
     */
    public long ask() {
        return latest.incrementAndGet();
    }

    /**
     * Whether a question is still the latest.
     *
     * @param number as {@link #ask()} gave it
     * @return false once another was asked
     */
    public boolean isLatest(long number) {
        return latest.get() == number;
    }
}
