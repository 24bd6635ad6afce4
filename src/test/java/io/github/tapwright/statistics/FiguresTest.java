package io.github.tapwright.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

    @ParameterizedTest
    @CsvSource({
        "98.41963, 0.0614, 98.420 ± 0.061",
        "24.3, 0.7, 24.30 ± 0.70",
        "1234.56, 12.3, 1235 ± 12",
        "1234.56, 123, 1235 ± 120",
        "-3.16, 0.25, −3.16 ± 0.25",
        "-0.004, 0.25, 0.00 ± 0.25",
        "0.0999, 0.0999, 0.10 ± 0.10",
        "98.4, 0.5, 98.40 ± 0.50",
        "98.4, 2, 98.4 ± 2.0"
    })
    void theUncertaintyHasTwoDigitsAndTheValueEndsAtTheSamePlace(double value, double u, String text) {
        assertThat(Figures.text(Estimate.of(value, u))).isEqualTo(text);
    }

    @Test
    void noUncertaintyIsSaidAsSuch() {
        assertThat(Figures.text(Estimate.of(98.4, 0))).isEqualTo("98.40 ± 0");
    }

    @Test
    void onAPictureAFinerUncertaintyIsRoundedUp() {
        assertThat(Figures.text(Estimate.of(198.51756, 0.00099), 2)).isEqualTo("198.52 ± 0.01");
        assertThat(Figures.text(Estimate.of(98.42, 0.061), 2)).isEqualTo("98.42 ± 0.07");
        assertThat(Figures.text(Estimate.of(98.42, 0.61), 2)).isEqualTo("98.42 ± 0.61");
    }

    @Test
    void plainFiguresHaveNoEmptyPlaces() {
        assertThat(Figures.plain(650.0)).isEqualTo("650");
        assertThat(Figures.plain(44.1)).isEqualTo("44.1");
    }

    @Test
    void aDifferenceHasItsSignUnlessItRoundsToNothing() {
        assertThat(Figures.difference(Estimate.of(3.123, 0.6))).isEqualTo("+3.1 ± 1.2");
        assertThat(Figures.difference(Estimate.of(-3.123, 0.6))).isEqualTo("−3.1 ± 1.2");
        assertThat(Figures.difference(Estimate.of(0.001, 0.6))).isEqualTo("0.0 ± 1.2");
        assertThat(Figures.difference(2.049, 2)).isEqualTo("+2.05");
        assertThat(Figures.interval(new Interval(1.88, 4.31))).isEqualTo("1.9 to 4.3");
    }
}
