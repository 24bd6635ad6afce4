package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Effect sizes against [Borenstein2009] (chapter 4, from memory, to be verified) and validation/small-samples. */
class EffectSizeReferenceTest {

    @Test
    void theWorkedExampleOfTheBook() {
        EffectSize effect = EffectSize.of(new Summary(50, 100, 4.5), new Summary(50, 103, 5.5))
                .orElseThrow();

        // the book rounds its factor J = 0.9923 and every step after it to four decimals
        assertThat(effect.value()).isCloseTo(0.5924, within(0.0002));
        assertThat(effect.standardUncertainty()).isCloseTo(0.2028, within(0.0001));
    }

    @ParameterizedTest
    @CsvSource({"2, 0.56419", "3, 0.72360", "5, 0.84075", "10, 0.92275", "20, 0.96194"})
    void theFactorForSmallSamples(double freedom, double published) {
        // from its definition by gamma functions, [Hedges1981]
        assertThat(EffectSize.smallSampleFactor(freedom)).isCloseTo(published, within(5.1e-6));
    }

    @Test
    void theIntervalIsThatOfTheNoncentralDistribution() {
        EffectSize effect = EffectSize.of(
                        Summary.of(30.02, 29.99, 30.11, 29.97, 30.01, 29.99),
                        Summary.of(29.89, 29.93, 29.72, 29.98, 30.02, 29.98))
                .orElseThrow();

        assertThat(effect.interval95().lower()).isCloseTo(SmallSamples.derived("effect_lower", "gauge"), within(1e-6));
        assertThat(effect.interval95().upper()).isCloseTo(SmallSamples.derived("effect_upper", "gauge"), within(1e-6));
    }

    @Test
    void aTinyScatterStillHasAnInterval() {
        EffectSize effect = EffectSize.of(new Summary(3, 0, 0.001), new Summary(3, 1, 0.001))
                .orElseThrow();

        assertThat(effect.interval95().contains(effect.value())).isTrue();
        assertThat(effect.interval95().lower()).isPositive();
    }

    @Test
    void withoutScatterThereIsNoMeasureOfSize() {
        assertThat(EffectSize.of(Summary.of(1, 1), Summary.of(2, 2))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4, 1, 2", "8, 2.5, 3", "3, -1, 0.5", "20, 4, 2.1", "8, 0, 1.86", "98, 3, 3.5", "2, 6, 9"})
    void theNoncentralDistributionAgreesWithAnotherProgram(double freedom, double shift, double x) {
        String text = (freedom + " " + shift + " " + x).replace(".0 ", " ").replaceAll("\\.0$", "");
        assertThat(NoncentralT.cumulative(x, freedom, shift))
                .isCloseTo(SmallSamples.derived("noncentral_t", text), within(1e-9));
    }

    @Test
    void atZeroItIsTheNormalDistribution() {
        assertThat(NoncentralT.cumulative(0, 5, 1.959964)).isCloseTo(0.025, within(1e-7));
    }
}
