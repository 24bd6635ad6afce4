package io.github.tapwright.desktop.work;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.instrument.RefusedEntryException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(20)
class BackgroundWorkTest {

    /** Stands in for the screen's thread: the test takes what is handed to it, one by one. */
    private final BlockingQueue<Runnable> screen = new LinkedBlockingQueue<>();

    private final List<Throwable> faults = new ArrayList<>();
    private final Notices notices = new Notices(faults::add);
    private final BackgroundWork work = new BackgroundWork(screen::add, notices);
    private final List<Object> results = new ArrayList<>();

    @AfterEach
    void close() {
        work.close();
    }

    private void untilIdle() throws InterruptedException {
        while (!work.running().isEmpty()) {
            Runnable next = screen.poll(10, TimeUnit.SECONDS);
            assertThat(next).as("something for the screen").isNotNull();
            next.run();
        }
    }

    private String said() {
        return notices.latest().get().map(Notice::words).orElse("");
    }

    @Test
    void resultsArriveInTheOrderAskedFor() throws InterruptedException {
        for (int i = 0; i < 20; i++) {
            int number = i;
            work.start(new Job<>("job " + i, progress -> number), results::add);
        }
        untilIdle();
        assertThat(results).hasSize(20).isSorted();
    }

    @Test
    void whatNobodyWaitsForGivesWayToWhatIsAskedFor() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch go = new CountDownLatch(1);
        work.startWhenIdle(
                new Job<>("sketch 0", progress -> {
                    started.countDown();
                    go.await();
                    return "sketch 0";
                }),
                results::add);
        started.await();
        work.startWhenIdle(new Job<>("sketch 1", progress -> "sketch 1"), results::add);
        work.startWhenIdle(new Job<>("sketch 2", progress -> "sketch 2"), results::add);
        work.start(new Job<>("opened", progress -> "opened"), results::add);
        work.start(new Job<>("named", progress -> "named"), results::add);

        List<String> order = List.of("sketch 0", "opened", "named", "sketch 1", "sketch 2");
        assertThat(work.running()).extracting(RunningJob::what).isEqualTo(order);
        go.countDown();
        untilIdle();
        assertThat(results).isEqualTo(order);
    }

    @Test
    void progressIsShownAsAShare() throws InterruptedException {
        CountDownLatch told = new CountDownLatch(1);
        work.start(
                new Job<>("counting", progress -> {
                    progress.at("file 2", 1, 4);
                    told.await();
                    return 1;
                }),
                results::add);
        RunningJob job = work.running().get(0);
        assertThat(job.share().get()).isEqualTo(RunningJob.UNKNOWN);
        screen.take().run();
        assertThat(job.share().get()).isEqualTo(0.25);
        assertThat(job.words().get()).isEqualTo("file 2");
        told.countDown();
        untilIdle();
    }

    @Test
    void aJobGivenUpBringsNothingAndSaysSo() throws InterruptedException {
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch givenUp = new CountDownLatch(1);
        work.start(
                new Job<>("a long one", progress -> {
                    started.countDown();
                    givenUp.await();
                    progress.at("still", 1, 2);
                    return "too late";
                }),
                results::add);
        started.await();
        work.running().get(0).giveUp();
        givenUp.countDown();
        untilIdle();
        assertThat(results).isEmpty();
        assertThat(said()).isEqualTo("Given up: a long one");
    }

    @Test
    void failuresAreToldInWordsAndOnlyThoseOfTheProgramAreLogged() throws InterruptedException {
        fail(new RefusedEntryException("humidity must lie between 0 and 100 %"));
        assertThat(said()).isEqualTo("failing: humidity must lie between 0 and 100 %");
        fail(new AccessDeniedException("/place"));
        assertThat(said()).contains("/place cannot be read or written");
        assertThat(faults).isEmpty();

        fail(new IllegalStateException("a slip"));
        assertThat(said()).contains("the program itself failed").contains("desk.log");
        assertThat(faults).hasSize(1);
        fail(new IOException("no room"));
        assertThat(said()).contains("no room");
    }

    private void fail(Exception failure) throws InterruptedException {
        work.start(
                new Job<>("failing", progress -> {
                    throw failure;
                }),
                results::add);
        untilIdle();
        assertThat(results).isEmpty();
    }

    @Test
    void undoRunsOnceAndOnlyWhileTheNoticeStands() {
        notices.say("done", () -> results.add("undone"));
        notices.undo();
        notices.undo();
        assertThat(results).containsExactly("undone");
    }
}
