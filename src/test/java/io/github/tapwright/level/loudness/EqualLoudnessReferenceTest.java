package io.github.tapwright.level.loudness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Equal-loudness contours against [ISO226]. */
class EqualLoudnessReferenceTest {

    /** By definition a contour passes 1 kHz at its own number; the formula's constants are rounded to 0.1 phon. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 40, 60, 80, 90})
    void aContourBearsTheNumberOfItsLevelAtOneKilohertz(double phon) {
        assertThat(EqualLoudness.levelDb(1000, phon).orElseThrow()).isCloseTo(phon, within(0.05));
    }

    /** [ISO226], table B.1, as quoted by [Phonometry]; the table is rounded to 0.1 dB. */
    @ParameterizedTest
    @CsvSource({"60, 100, 78.5", "60, 2000, 60.0"})
    void printedContours(double phon, double frequencyHz, double levelDb) {
        assertThat(EqualLoudness.levelDb(frequencyHz, phon).orElseThrow()).isCloseTo(levelDb, within(0.051));
    }

    @Test
    void theInverseGoesBack() {
        for (double f : EqualLoudness.frequenciesHz()) {
            double level = EqualLoudness.levelDb(f, 57).orElseThrow();
            assertThat(EqualLoudness.phon(f, level).orElseThrow()).isCloseTo(57, within(1e-9));
        }
    }

    @Test
    void lowTonesNeedMoreLevelAndTheEarIsKeenestNearThreeKilohertz() {
        assertThat(EqualLoudness.frequenciesHz()).hasSize(29).isSorted();
        double at100 = EqualLoudness.levelDb(100, 40).orElseThrow();
        double at3150 = EqualLoudness.levelDb(3150, 40).orElseThrow();
        assertThat(at100).isGreaterThan(60).isLessThan(66);
        assertThat(at3150).isLessThan(40);
    }

    @Test
    void outsideTheStandardsRangeThereIsNoContour() {
        assertThat(EqualLoudness.levelDb(1000, 19)).isEmpty();
        assertThat(EqualLoudness.levelDb(1000, 91)).isEmpty();
        assertThat(EqualLoudness.levelDb(5000, 81)).isEmpty();
        assertThat(EqualLoudness.levelDb(4000, 81)).isPresent();
        assertThat(EqualLoudness.phon(1000, 5)).isEmpty();
        assertThatThrownBy(() -> EqualLoudness.levelDb(440, 40)).hasMessageContaining("440");
    }
}
