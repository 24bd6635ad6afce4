package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Read ahead or not: the same samples, the same trouble. */
class ReadAheadTest {

    private static final SampleRate RATE = new SampleRate(48_000);

    private static double[] noise(int length, long seed) {
        return new Random(seed).doubles(length, -1, 1).toArray();
    }

    @ParameterizedTest
    @CsvSource({"0, 8192", "1, 8192", "65536, 8192", "65537, 8192", "200000, 7001", "200000, 100000", "131072, 65536"})
    void handsOnEverySampleInOrder(int length, int blockLength) {
        double[] left = noise(length, 1);
        double[] right = noise(length, 2);
        double[][] read = new double[2][length];
        double[][] block = new double[2][blockLength];
        int at = 0;
        try (ReadAhead ahead = new ReadAhead(Recording.of(RATE, left, right).stream())) {
            assertThat(ahead.channelCount()).isEqualTo(2);
            assertThat(ahead.sampleRate()).isEqualTo(RATE);
            for (int n = ahead.read(block); n > 0; n = ahead.read(block)) {
                System.arraycopy(block[0], 0, read[0], at, n);
                System.arraycopy(block[1], 0, read[1], at, n);
                at += n;
            }
            assertThat(ahead.read(block)).as("once more at the end").isZero();
        }
        assertThat(at).isEqualTo(length);
        assertThat(read[0]).containsExactly(left);
        assertThat(read[1]).containsExactly(right);
    }

    /** Sound that comes a little at a time, ends in trouble, waits when told to, and knows whether it was closed. */
    private static final class Breaking implements SampleStream {
        private final Throwable trouble;
        private final CountDownLatch mayGoOn;
        private int left;
        private volatile boolean closed;

        Breaking(int good, Throwable trouble, CountDownLatch mayGoOn) {
            this.left = good;
            this.trouble = trouble;
            this.mayGoOn = mayGoOn;
        }

        @Override
        public SampleRate sampleRate() {
            return RATE;
        }

        @Override
        public int channelCount() {
            return 1;
        }

        @Override
        public int read(double[][] block) {
            try {
                mayGoOn.await();
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
            int count = Math.min(Math.min(left, 1000), block[0].length);
            if (count == 0) {
                if (trouble instanceof Error error) {
                    throw error;
                }
                throw (RuntimeException) trouble;
            }
            for (int i = 0; i < count; i++) {
                block[0][i] = left--;
            }
            return count;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    private static Stream<Arguments> troubles() {
        return Stream.of(
                Arguments.of(70_000, new UnreadableRecordingException("torn")),
                Arguments.of(0, new UnreadableRecordingException("torn at once")),
                Arguments.of(3, new OutOfMemoryError("of the source")));
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void throwsTheSourcesTroubleAfterTheGoodSamples(int good, Throwable trouble) {
        double[][] block = new double[1][7001];
        int left = good;
        try (ReadAhead ahead = new ReadAhead(new Breaking(good, trouble, new CountDownLatch(0)))) {
            while (left > 0) {
                int count = ahead.read(block);
                for (int i = 0; i < count; i++) {
                    assertThat(block[0][i]).isEqualTo(left--);
                }
            }
            assertThatThrownBy(() -> ahead.read(block)).isSameAs(trouble);
            assertThatThrownBy(() -> ahead.read(block)).isSameAs(trouble);
        }
    }

    @Test
    @Timeout(value = 20, unit = TimeUnit.SECONDS)
    void closingWaitsForTheDecoderEndsItAndLeavesTheSourceOpen() throws Exception {
        CountDownLatch mayGoOn = new CountDownLatch(1);
        Breaking source = new Breaking(10_000_000, new IllegalStateException("read too far"), mayGoOn);
        ReadAhead ahead = new ReadAhead(source);
        CompletableFuture<Void> closing = CompletableFuture.runAsync(ahead::close);
        assertThatThrownBy(() -> closing.get(100, TimeUnit.MILLISECONDS))
                .as("somebody still reads")
                .isInstanceOf(TimeoutException.class);
        mayGoOn.countDown();
        closing.get();
        while (Thread.getAllStackTraces().keySet().stream()
                .anyMatch(thread -> thread.getName().equals("reading ahead"))) {
            Thread.sleep(5);
        }
        assertThat(source.closed).isFalse();
        ahead.close();
    }
}
