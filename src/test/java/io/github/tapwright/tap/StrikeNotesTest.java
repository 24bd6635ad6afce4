package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What is said about how strikes were taken is true of what was done. */
class StrikeNotesTest {

    private static final int RATE_HZ = 44_100;

    private static StrikeSet strikes(double seconds, DoubleUnaryOperator signal, TapSettings settings) {
        double[] x = new double[(int) (seconds * RATE_HZ)];
        for (int n = 0; n < x.length; n++) {
            x[n] = signal.applyAsDouble((double) n / RATE_HZ);
        }
        TapTrack track = TapTrack.read(Recording.of(new SampleRate(RATE_HZ), x).stream(), settings);
        return StrikeSet.find(List.of(track), settings);
    }

    private static double ring(double t, double hz, double decaySeconds) {
        return t < 0 ? 0 : Math.exp(-t / decaySeconds) * Math.sin(2 * Math.PI * hz * t);
    }

    @Test
    void aStrikeThatNoQuietWentBeforeIsUsedWithAWarning() {
        StrikeSet set = strikes(0.4, t -> 0.5 * ring(t, 190, 0.3), TapSettings.STANDARD);

        assertThat(set.strikes())
                .singleElement()
                .matches(Strike::used)
                .satisfies(s -> assertThat(s.snrDb()).isLessThan(TapSettings.STANDARD.minimumSnrDb()));
        assertThat(set.notes())
                .singleElement()
                .asString()
                .startsWith("no quiet before the strike, so the noise was not judged");
    }

    @Test
    void humIsSaidToBeTakenOutOnlyWhereSomethingIsFitted() {
        DoubleUnaryOperator hummed =
                t -> 0.5 * ring(t - 2, 190, 0.05) + 0.01 * (ring(t, 50, 1e9) + ring(t, 150, 1e9) + ring(t, 250, 1e9));
        StrikeSet used = strikes(6, hummed, TapSettings.STANDARD);
        assertThat(used.decays()).isPresent();
        assertThat(used.notes()).anyMatch(n -> n.startsWith("mains hum"));

        StrikeSet rejected =
                strikes(6, t -> Math.max(-0.1, Math.min(0.1, hummed.applyAsDouble(t))), TapSettings.STANDARD);
        assertThat(rejected.strikes()).isNotEmpty();
        assertThat(rejected.decays()).isEmpty();
        assertThat(rejected.notes()).noneMatch(n -> n.startsWith("mains hum"));
    }
}
