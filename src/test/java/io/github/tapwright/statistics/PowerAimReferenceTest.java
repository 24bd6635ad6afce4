package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers of instruments; validation/small-samples has them by another road. Cohen's table prints 64 and 26 for 0.5 and 0.8. */
class PowerAimReferenceTest {

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.5, 0.8, 1.0, 1.5, 2.0, 3.0})
    void asManyAsAnotherProgramSays(double effect) {
        String text = String.valueOf(effect);

        assertThat(PowerAim.USUAL.eachGroup(2 * effect, 2)).hasValue((int) SmallSamples.derived("per_group", text));
    }

    @Test
    void thoseThatAreThereCount() {
        assertThat(PowerAim.USUAL.furtherInEachGroup(20, 0.5, 1)).hasValue(44);
        assertThat(PowerAim.USUAL.furtherInEachGroup(70, 0.5, 1)).hasValue(0);
    }

    @Test
    void aHopelessQuestionHasNoNumber() {
        assertThat(PowerAim.USUAL.eachGroup(0.001, 1)).isEmpty();
        assertThat(PowerAim.USUAL.furtherInEachGroup(3, 0.001, 1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.8, 0", "0.04, 0.05", "1, 0.05", "NaN, 0.05"})
    void refusesAimsNoStudyCanHave(double power, double significance) {
        assertThatThrownBy(() -> new PowerAim(power, significance)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0", "1, -1", "NaN, 1"})
    void refusesNothingToSee(double difference, double deviation) {
        assertThatThrownBy(() -> PowerAim.USUAL.eachGroup(difference, deviation))
                .hasMessageContaining("above zero");
    }
}
