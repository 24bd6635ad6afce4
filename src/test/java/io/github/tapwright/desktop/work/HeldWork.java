package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.Progress;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;

/** Holds jobs back until a test lets them go, in the order they were asked for: the maker is quicker than the work. */
public final class HeldWork implements Work {

    private final Notices notices;
    private final Deque<Runnable> waiting = new ArrayDeque<>();
    private final Deque<Runnable> worked = new ArrayDeque<>();

    /** Work for one test. */
    public HeldWork(Notices notices) {
        this.notices = notices;
    }

    @Override
    public <T> void start(Job<T> job, Consumer<T> done) {
        waiting.add(() -> {
            try {
                T result = job.task().run(Progress.SILENT);
                worked.add(() -> done.accept(result));
            } catch (Exception e) {
                worked.add(() -> notices.failed(job.what(), e));
            }
        });
    }

    @Override
    public <T> void startWhenIdle(Job<T> job, Consumer<T> done) {
        start(job, done);
    }

    /** Does the next job; its result is on its way to the screen. */
    public void work() {
        waiting.remove().run();
    }

    /** The next result arrives on the screen. */
    public void deliver() {
        worked.remove().run();
    }

    /** Everything is done and arrives, and what that asks for, too. */
    public void finish() {
        while (!waiting.isEmpty() || !worked.isEmpty()) {
            if (worked.isEmpty()) {
                work();
            }
            deliver();
        }
    }
}
