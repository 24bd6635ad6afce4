package io.github.tapwright.desktop.work;

import java.util.function.Consumer;

/** Does what takes longer than a blink. */
public interface Work {

    /**
     * Starts a job; its result arrives on the screen's thread, a failure becomes a notice.
     *
     * @param job what to do
     * @param done takes the result; not called where the job failed or was given up
     * @param <T> what the job brings
     */
    <T> void start(Job<T> job, Consumer<T> done);

    /**
     * Starts a job nobody waits for: every job the maker asks for goes first, also one asked for later.
     *
     * @param job what to do; short, since one under way is not broken off
     * @param done takes the result, as above
     * @param <T> what the job brings
     */
    <T> void startWhenIdle(Job<T> job, Consumer<T> done);
}
