package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CurveWindowTest {

    private static final CurveWindow ALL = new CurveWindow(60, 1000, -60, 20);

    @Test
    void slidingKeepsTheSizeAndComesBack() {
        CurveWindow there = ALL.slid(0.2, 0.1);
        assertThat(there.highHz() / there.lowHz()).isCloseTo(1000.0 / 60, within(1e-9));
        assertThat(there.highDb() - there.lowDb()).isCloseTo(80, within(1e-9));
        CurveWindow back = there.slid(-0.2, -0.1);
        assertThat(back.lowHz()).isCloseTo(60, within(1e-9));
        assertThat(back.lowDb()).isCloseTo(-60, within(1e-9));
    }

    @Test
    void comingCloserLeavesTheFrequencyUnderTheHandWhereItWas() {
        CurveWindow closer = ALL.closer(2, 200);
        assertThat(closer.shareOf(200)).isCloseTo(ALL.shareOf(200), within(1e-9));
        assertThat(Math.log(closer.highHz() / closer.lowHz())).isCloseTo(Math.log(1000.0 / 60) / 2, within(1e-9));
    }

    @Test
    void thereIsAnEndToComingCloserAndToSliding() {
        CurveWindow window = ALL;
        for (int i = 0; i < 200; i++) {
            window = window.closer(1.25, 200);
        }
        assertThat(window.highHz() / window.lowHz()).isGreaterThan(1.005);
        for (int i = 0; i < 200; i++) {
            window = window.slid(0.5, 0);
        }
        assertThat(window.highHz()).isLessThanOrEqualTo(24_000.001);
        CurveWindow back = ALL;
        for (int i = 0; i < 50; i++) {
            back = back.closer(0.5, 200).taller(0.5, 0);
        }
        assertThat(back.lowHz()).isGreaterThanOrEqualTo(5);
        assertThat(back.highDb() - back.lowDb()).isLessThanOrEqualTo(200);
    }
}
