package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettlingTest {

    @Test
    void afterOneTimeConstantAThirdIsLeft() {
        Settling.Verdict verdict = Settling.USUAL.judge(-20, 24);

        assertThat(verdict.remainingShare()).isCloseTo(Math.exp(-1), within(1e-12));
        assertThat(verdict.lagPercentHumidity()).isCloseTo(20 * Math.exp(-1), within(1e-12));
        assertThat(verdict.settled()).isFalse();
    }

    @Test
    void theHoursStillNeededAreEnough() {
        double needed = Settling.USUAL.judge(20, 10).hoursStillNeeded();

        assertThat(Settling.USUAL.judge(20, 10 + needed + 1e-6).settled()).isTrue();
        assertThat(Settling.USUAL.judge(20, 10 + needed - 1e-6).settled()).isFalse();
        assertThat(Settling.USUAL.judge(20, 1000).hoursStillNeeded()).isZero();
    }

    @Test
    void aSmallChangeNeedsNoTime() {
        assertThat(Settling.USUAL.judge(2, 0).settled()).isTrue();
        assertThat(Settling.USUAL.judge(0, 0).settled()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"101, 1", "NaN, 1", "10, -1", "10, NaN"})
    void refusesChangesThatAreNone(double change, double hours) {
        assertThatThrownBy(() -> Settling.USUAL.judge(change, hours)).hasMessageContaining("change");
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "Infinity, 1", "1, 0", "1, Infinity", "NaN, 1"})
    void refusesRulesThatAreNone(double hours, double points) {
        assertThatThrownBy(() -> new Settling(hours, points)).hasMessageContaining("above zero");
    }
}
