package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.Progress;
import java.util.function.Consumer;

/** Does every job at once, where there is no screen to keep free: scripts and models alone. */
public final class DirectWork implements Work {

    private final Notices notices;

    /**
     * Work without a screen.
     *
     * @param notices takes the failures
     */
    public DirectWork(Notices notices) {
        this.notices = notices;
    }

    @Override
    public <T> void start(Job<T> job, Consumer<T> done) {
        T result;
        try {
            result = job.task().run(Progress.SILENT);
        } catch (Exception e) {
            notices.failed(job.what(), e);
            return;
        }
        done.accept(result);
    }

    @Override
    public <T> void startWhenIdle(Job<T> job, Consumer<T> done) {
        start(job, done);
    }
}
