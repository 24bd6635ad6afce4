package io.github.tapwright.comparison.listening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ListeningVerdictTest {

    @Test
    void twelveOfSixteenAreEnoughAndElevenAreNot() {
        ListeningVerdict enough = ListeningVerdict.of(12, 16);
        assertThat(enough.toldApart()).isTrue();
        assertThat(enough.needed()).isEqualTo(12); // [ISO10399], table A.1, 5 %
        assertThat(enough.chance()).isCloseTo(2517 / 65536.0, within(1e-12)); // counted outcomes

        assertThat(ListeningVerdict.of(11, 16).toldApart()).isFalse();
    }

    @Test
    void sayingHowOftenAGoodEarWouldFailIsHonest() {
        // P(X ≥ 12 | n = 16, p = 3/4) = Σ C(16, i)·3ⁱ/4¹⁶ over 12 … 16 = 2705895018/4294967296, worked by hand
        double worked =
                (1820.0 * 531441 + 560.0 * 1594323 + 120.0 * 4782969 + 16.0 * 14348907 + 43046721) / 4294967296.0;
        assertThat(ListeningVerdict.of(8, 16).chanceToProve()).isCloseTo(worked, within(1e-12));
    }
}
