package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.Progress;

/**
 * A piece of work.
 *
 * @param what what is being done, as the maker reads it: "reading the shelf"
 * @param task does it, off the screen's thread
 * @param <T> what it brings
 */
public record Job<T>(String what, Task<T> task) {

    /**
     * Does the work of a job.
     *
     * @param <T> what it brings
     */
    @FunctionalInterface
    public interface Task<T> {

        /**
         * Works.
         *
         * @param progress is told how far the work is; throws {@link GivenUpException} once the maker gave it up
         * @return the result
         * @throws Exception if it fails; the message is shown
         */
        T run(Progress progress) throws Exception;
    }
}
