package io.github.tapwright.desktop.notes;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.chart.Light;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShadeTest {

    /** 4.5 : 1 for letters of usual size: [WCAG22], success criterion 1.4.3. */
    @ParameterizedTest
    @EnumSource(Light.class)
    void lettersCanBeReadOnEveryShade(Light light) {
        for (int i = 0; i <= 200; i++) {
            assertThat(Shade.of(i / 200.0, light).contrast())
                    .as("share %s", i / 200.0)
                    .isGreaterThanOrEqualTo(4.5);
        }
    }

    @ParameterizedTest
    @EnumSource(Light.class)
    void theEndsOfTheRampAreFarApart(Light light) {
        String ends = Shade.of(0, light).background() + Shade.of(1, light).background();
        assertThat(ends).hasSize(14);
        Shade faint = Shade.of(0, light);
        Shade strong = Shade.of(1, light);
        assertThat(new Shade(faint.background(), strong.background()).contrast())
                .isGreaterThan(7);
    }
}
