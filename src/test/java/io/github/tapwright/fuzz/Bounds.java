package io.github.tapwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.function.Executable;

/**
 * What a reading of strange input keeps to: it ends within 5 s, fails in the program's own words only, and its
 * memory follows the input's real size, whatever the input claims.
 */
public final class Bounds {

    private static final int ATTEMPTS = 4;
    private static final Duration LONGEST = Duration.ofSeconds(5);

    /** Everything a reading takes, given back or not; decoders take and drop a buffer for every frame. */
    private static final long ALLOWANCE_BYTES = 96L << 20;

    private static final long BYTES_FOR_ONE = 20_000;

    private final List<Class<? extends Exception>> own;

    private Bounds(List<Class<? extends Exception>> own) {
        this.own = own;
    }

    /** The bounds of a reading that may refuse its input with these, and with nothing else. */
    public static Bounds refusingWith(List<Class<? extends Exception>> own) {
        return new Bounds(List.copyOf(own));
    }

    /**
     * Reads, and fails where the reading leaves its bounds every time: the first readings of a kind also load a decoder
     * with all its tables, each class of it rewritten by the fuzzer on a machine that may be busy.
     */
    public void hold(int inputBytes, Executable reading) {
        boolean within = false;
        for (int i = 1; i < ATTEMPTS && !within; i++) {
            within = keeps(inputBytes, reading);
        }
        if (!within) {
            once(inputBytes, reading);
        }
    }

    private boolean keeps(int inputBytes, Executable reading) {
        try {
            once(inputBytes, reading);
            return true;
        } catch (AssertionError perhapsLoading) {
            return false;
        }
    }

    private void once(int inputBytes, Executable reading) {
        Assertions.assertTimeoutPreemptively(LONGEST, () -> {
            long before = taken();
            read(reading);
            assertThat(taken() - before)
                    .as("memory taken for %d bytes of input", inputBytes)
                    .isLessThan(ALLOWANCE_BYTES + BYTES_FOR_ONE * inputBytes);
        });
    }

    private void read(Executable reading) throws Throwable {
        try {
            reading.execute();
        } catch (Exception e) {
            if (own.stream().noneMatch(c -> c.isInstance(e))) {
                throw e;
            }
            assertThat(e.getMessage()).isNotBlank();
            refuseExhaustion(e);
        }
    }

    /** A refusal made of an exhausted heap or stack is no refusal: the next input would have had to pay for it. */
    private static void refuseExhaustion(Exception refusal) {
        for (Throwable cause = refusal.getCause(); cause != null; cause = cause.getCause()) {
            if (cause instanceof VirtualMachineError error) {
                throw error;
            }
        }
    }

    private static long taken() {
        return ((ThreadMXBean) ManagementFactory.getThreadMXBean()).getCurrentThreadAllocatedBytes();
    }
}
