package io.github.tapwright.desktop.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.instrument.RefusedEntryException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    @Test
    void freezingAndBoilingReadAsTheyShouldInBothUnits() {
        assertThat(Units.FAHRENHEIT.text(0)).isEqualTo("32");
        assertThat(Units.FAHRENHEIT.text(100)).isEqualTo("212");
        assertThat(Units.FAHRENHEIT.read("212").orElseThrow()).isCloseTo(100, within(1e-12));
        assertThat(Units.CELSIUS.read("20,5")).contains(20.5);
        assertThat(Units.CELSIUS.read("−3")).contains(-3.0);
    }

    @Test
    void whatIsTypedComesBackAsItWas() {
        for (int tenths = -300; tenths < 1100; tenths++) {
            String typed = Units.FAHRENHEIT.text(
                    Units.FAHRENHEIT.read(Double.toString(tenths / 10.0)).orElseThrow());
            assertThat(Double.parseDouble(typed.replace('−', '-'))).isEqualTo(tenths / 10.0);
        }
    }

    @Test
    void nothingTypedIsUnknown() {
        assertThat(Units.CELSIUS.read("  ")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"warm", "NaN", "Infinity", "20 °C", "1e999"})
    void wordsAreNoFigures(String typed) {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> Units.CELSIUS.read(typed))
                .withMessageContaining(typed)
                .withMessageContaining("such as 21.5");
    }
}
