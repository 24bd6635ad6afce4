package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.climate.ShopWindow.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopWindowTest {

    @ParameterizedTest
    @CsvSource({"40, INSIDE, 0", "50, INSIDE, 0", "38.5, TOO_DRY, 1.5", "57, TOO_DAMP, 7"})
    void saysWhereTheAirLiesAndHowFarOutside(double humidity, Place place, double points) {
        ShopWindow.Verdict verdict = ShopWindow.USUAL.judge(new RoomClimate(21, humidity));

        assertThat(verdict.place()).isEqualTo(place);
        assertThat(verdict.pointsOutside()).isCloseTo(points, within(1e-12));
        assertThat(verdict.window()).isEqualTo(new ShopWindow(40, 50));
    }

    @Test
    void theWindowIsTheShopsOwn() {
        assertThat(new ShopWindow(45, 55).judge(new RoomClimate(21, 53)).place())
                .isEqualTo(Place.INSIDE);
    }

    @ParameterizedTest
    @CsvSource({"0, 50", "50, 50", "60, 40", "50, 101", "NaN, 50"})
    void refusesWhatIsNoWindow(double lowest, double highest) {
        assertThatThrownBy(() -> new ShopWindow(lowest, highest)).hasMessageContaining("upwards");
    }
}
