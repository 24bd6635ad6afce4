package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopWindowTest {

    @ParameterizedTest
    @CsvSource({"0, 50", "50, 50", "60, 40", "50, 101", "NaN, 50"})
    void refusesWhatIsNoWindow(double lowest, double highest) {
        assertThatThrownBy(() -> new ShopWindow(lowest, highest)).hasMessageContaining("upwards");
    }
}
