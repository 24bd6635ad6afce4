package io.github.tapwright.desktop.work;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Runs jobs one after the other on a thread of its own, so that two never change the archive at once. Results arrive in
 * the order asked for, those of jobs nobody waits for after all others.
 */
public final class BackgroundWork implements Work, AutoCloseable {

    private final Executor screen;
    private final Notices notices;
    private final ObservableList<RunningJob> running = FXCollections.observableArrayList();
    private final Queue<Waiting> asked = new ConcurrentLinkedQueue<>();
    private final Queue<Waiting> idle = new ConcurrentLinkedQueue<>();
    private static final int PATIENCE_SECONDS = 10;

    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread worker = new Thread(task, "tapwright-work");
        worker.setDaemon(true);
        return worker;
    });

    /**
     * Work that reports to a screen.
     *
     * @param screen runs things on the screen's thread
     * @param notices takes the failures
     */
    public BackgroundWork(Executor screen, Notices notices) {
        this.screen = screen;
        this.notices = notices;
    }

    /**
     * The jobs under way or waiting, in the order they are done.
     *
     * @return changes on the screen's thread only
     */
    public ObservableList<RunningJob> running() {
        return running;
    }

    private record Waiting(RunningJob shown, Runnable run) {}

    @Override
    public <T> void start(Job<T> job, Consumer<T> done) {
        RunningJob shown = new RunningJob(job.what(), true);
        long before =
                running.stream().filter(r -> r.isAsked() || r.isUnderWay()).count();
        running.add((int) before, shown);
        wait(asked, job, shown, done);
    }

    @Override
    public <T> void startWhenIdle(Job<T> job, Consumer<T> done) {
        RunningJob shown = new RunningJob(job.what(), false);
        running.add(shown);
        wait(idle, job, shown, done);
    }

    private <T> void wait(Queue<Waiting> queue, Job<T> job, RunningJob shown, Consumer<T> done) {
        queue.add(new Waiting(shown, () -> run(job, shown, done)));
        thread.execute(this::runNext);
    }

    /** There is one call for every job that waits. */
    private void runNext() {
        Waiting first = asked.poll();
        Waiting next = first == null ? idle.poll() : first;
        if (next != null) {
            next.shown().begin();
            next.run().run();
        }
    }

    // A job may fail in any way; whatever it is, the maker is told and the window lives on.
    @SuppressWarnings("CatchAndPrintStackTrace")
    private <T> void run(Job<T> job, RunningJob shown, Consumer<T> done) {
        try {
            if (shown.isGivenUp()) {
                throw new GivenUpException();
            }
            T result = job.task().run(shown.progress(screen));
            screen.execute(() -> {
                running.remove(shown);
                // Given up too late: what is done is done, and the maker is told so.
                done.accept(result);
            });
        } catch (GivenUpException e) {
            end(shown, () -> notices.say("Given up: " + job.what()));
        } catch (Exception e) {
            end(shown, () -> notices.failed(job.what(), e));
        }
    }

    private void end(RunningJob shown, Runnable words) {
        screen.execute(() -> {
            running.remove(shown);
            words.run();
        });
    }

    /**
     * Gives up what waits, asks the job under way to end, and waits for that some seconds, so that nothing is closed under
     * it; takes no other.
     */
    @Override
    public void close() {
        running.forEach(RunningJob::giveUp);
        thread.shutdown();
        try {
            thread.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
