package io.github.tapwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * The maker's wish to stop: Enter, or Ctrl-C. Ctrl-C ends a program, so the end is held up until what was recorded is
 * kept; then the program ends with the exit code of its work.
 */
final class StopSignal implements AutoCloseable {

    private final CountDownLatch wanted = new CountDownLatch(1);
    private final CountDownLatch finished = new CountDownLatch(1);
    private final Thread hook = new Thread(this::holdUpTheEnd, "tapwright-stop");
    private volatile boolean ending;
    private volatile int exitCode = ExitCode.PROGRAM;

    StopSignal(InputStream keys) {
        Runtime.getRuntime().addShutdownHook(hook);
        Thread reader = new Thread(() -> waitForEnter(keys), "tapwright-enter");
        reader.setDaemon(true);
        reader.start();
    }

    /** Without a keyboard the input ends at once, which is no wish to stop. */
    private void waitForEnter(InputStream keys) {
        try {
            for (int key = keys.read(); key != -1; key = keys.read()) {
                if (key == '\n') {
                    wanted.countDown();
                    return;
                }
            }
        } catch (IOException e) {
            return; // no keyboard either
        }
    }

    private void holdUpTheEnd() {
        ending = true;
        wanted.countDown();
        try {
            finished.await();
            Runtime.getRuntime().halt(exitCode);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits a while; true if the maker wants to stop. */
    boolean isWantedWithin(long millis) {
        try {
            return wanted.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return true;
        }
    }

    /** Whether the program ends with this work, so that nobody after it can say anything. */
    boolean isProgramEnding() {
        return ending;
    }

    /** How the work ended. */
    void endWith(int code) {
        exitCode = code;
    }

    @Override
    public void close() {
        finished.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            return; // it is running: the program ends now
        }
    }
}
