package io.github.tapwright.sitting;

/** Told how far a long task has come, so that a face can show it. */
@FunctionalInterface
public interface Progress {

    /** Tells nobody. */
    Progress SILENT = (step, done, total) -> {};

    /**
     * Called before each step; {@link #end} is called once the task is over.
     *
     * @param step what is being done, in words, such as "reading taps.wav"
     * @param done steps finished
     * @param total steps in all
     */
    void at(String step, int done, int total);

    /**
     * Called when a task is over, whether it succeeded or failed, so that nothing goes on saying it runs; a task within another ends by itself,
     * and the other goes on with its next step.
     */
    default void end() {
        at("done", 1, 1);
    }
}
