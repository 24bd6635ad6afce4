package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.SampleStream;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** Sound that breaks off after so many samples, and knows whether it was closed. */
    private static final class Breaking implements SampleStream {
        private final RuntimeException trouble;
        private int left;
        private boolean closed;

        Breaking(int good, RuntimeException trouble) {
            this.left = good;
            this.trouble = trouble;
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
            if (left == 0) {
                throw trouble;
            }
            int count = Math.min(left, block[0].length);
            left -= count;
            return count;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    @Test
    void throwsTheSourcesTroubleAfterTheGoodSamples() {
        UnreadableRecordingException trouble = new UnreadableRecordingException("torn");
        double[][] block = new double[1][65_536];
        try (ReadAhead ahead = new ReadAhead(new Breaking(70_000, trouble))) {
            assertThat(ahead.read(block)).isEqualTo(65_536);
            assertThat(ahead.read(block)).isEqualTo(4_464);
            assertThatThrownBy(() -> ahead.read(block)).isSameAs(trouble);
            assertThatThrownBy(() -> ahead.read(block)).isSameAs(trouble);
        }
    }

    @Test
    void leavesTheSourceOpenAndToOthers() throws InterruptedException {
        Breaking source = new Breaking(10_000_000, new IllegalStateException("read too far"));
        ReadAhead ahead = new ReadAhead(source);
        ahead.read(new double[1][100]);
        ahead.close();
        int left = source.left;
        Thread.sleep(20);
        assertThat(source.left).as("nobody reads on").isEqualTo(left);
        assertThat(source.closed).isFalse();
        ahead.close();
        assertThat(ahead.read(new double[1][100]))
                .as("what was decoded may still be used")
                .isEqualTo(100);
    }
}
