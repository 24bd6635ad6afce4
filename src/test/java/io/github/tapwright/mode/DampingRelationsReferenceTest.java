package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Q, bandwidth, decay rate and decay time of one resonator, measured on its response by another program.
 *
 * <p>Tolerance: the table has nine digits, of which cancellation in σ = |s|/(2Q) leaves eight.
 */
class DampingRelationsReferenceTest {

    private static final Percentage EIGHT_DIGITS = Percentage.withPercentage(2e-6);

    static Stream<PublishedRow> rows() {
        return PublishedTable.rows("damping/relations.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void polesOfTheFit(PublishedRow row) {
        Pole pole = new Pole(2 * Math.PI * row.number("damped_frequency_hz"), row.number("decay_rate_per_s"));
        assertThat(pole.naturalHz()).isCloseTo(row.number("frequency_hz"), EIGHT_DIGITS);
        assertThat(pole.q()).isCloseTo(row.number("q"), EIGHT_DIGITS);
        assertThat(pole.widthHz()).isCloseTo(row.number("half_power_width_hz"), EIGHT_DIGITS);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void polesOfTheBodyModel(PublishedRow row) {
        var pole = new io.github.tapwright.mode.body.Pole(
                row.number("decay_rate_per_s"), row.number("damped_frequency_hz"));
        assertThat(pole.frequencyHz()).isCloseTo(row.number("frequency_hz"), EIGHT_DIGITS);
        assertThat(pole.q()).isCloseTo(row.number("q"), EIGHT_DIGITS);
        assertThat(pole.decayTimeSeconds()).isCloseTo(row.number("decay_time_s"), EIGHT_DIGITS);
    }

    /** What the tests synthesise with, including one period of its ringing. */
    @ParameterizedTest
    @MethodSource("rows")
    void modesOfTheSynthesis(PublishedRow row) {
        TrueMode mode = TrueMode.resonator(row.number("frequency_hz"), row.number("q"), 1);
        assertThat(mode.decayRatePerSecond()).isCloseTo(row.number("decay_rate_per_s"), EIGHT_DIGITS);
        assertThat(mode.dampedFrequencyHz()).isCloseTo(row.number("damped_frequency_hz"), EIGHT_DIGITS);
        assertThat(mode.decayTimeSeconds()).isCloseTo(row.number("decay_time_s"), EIGHT_DIGITS);
        Complex afterOnePeriod = mode.pole().divide(mode.dampedFrequencyHz()).exp();
        assertThat(-Math.log(afterOnePeriod.getReal())).isCloseTo(row.number("log_decrement"), EIGHT_DIGITS);
        assertThat(afterOnePeriod.getImaginary()).isCloseTo(0, within(1e-12));
        double fallDb = -20 * Math.log10(mode.pole().divide(100).exp().norm()) * 100;
        assertThat(fallDb).isCloseTo(row.number("decay_db_per_s"), EIGHT_DIGITS);
    }
}
