package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.note.StretchedSeries.Measured;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class StretchedSeriesTest {

    private static final double U_HZ = 0.01;

    private static Measured partial(int number) {
        return new Measured(number, number * 200 * Math.sqrt((1 + 1e-4 * number * number) / (1 + 1e-4)), U_HZ);
    }

    /** Three partials lie exactly on their series: nothing scatters, so the noise alone makes the pitch unsure. */
    @Test
    void aPitchOfThreePartialsLeftRestsOnTheLineTheyGive() {
        List<Measured> partials = new ArrayList<>(List.of(partial(1), partial(2), partial(5)));
        partials.add(new Measured(4, 1.02 * partial(4).hz(), U_HZ));
        StretchedSeries series = StretchedSeries.fit(partials);
        assertThat(series.size()).isEqualTo(3);
        assertThat(series.used(4)).isFalse();
        assertThat(series.tellsStretch()).isFalse();
        assertThat(series.pitchHz().value()).isCloseTo(200, within(1e-6));
        assertThat(series.pitchHz().degreesOfFreedom()).isInfinite();
    }
}
