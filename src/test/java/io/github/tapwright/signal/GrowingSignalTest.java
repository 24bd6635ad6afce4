package io.github.tapwright.signal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What went in piece by piece comes out in one row, whoever uses the pieces again meanwhile. */
class GrowingSignalTest {

    @Test
    void joinsWhatItTook() {
        GrowingSignal signal = new GrowingSignal();
        double[] block = {1, 2, 3, 99};
        signal.append(block, 3);
        block[0] = -1;
        signal.append(new double[0], 0);
        signal.append(new double[] {4, 5}, 2);
        assertThat(signal.length()).isEqualTo(5);
        assertThat(signal.joined()).containsExactly(1, 2, 3, 4, 5);
        signal.append(new double[] {6}, 1);
        assertThat(signal.joined()).containsExactly(1, 2, 3, 4, 5, 6);
    }

    @Test
    void isEmptyBeforeTheFirstSample() {
        assertThat(new GrowingSignal().joined()).isEmpty();
    }
}
