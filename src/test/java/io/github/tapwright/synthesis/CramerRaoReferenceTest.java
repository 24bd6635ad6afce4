package io.github.tapwright.synthesis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.validation.PublishedRow;
import io.github.tapwright.validation.PublishedTable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The bound with the amplitudes projected out, against the whole information matrix inverted by another program.
 *
 * <p>Tolerance 0.001 %: seven digits printed, and slopes by central differences there.
 */
class CramerRaoReferenceTest {

    private static final Percentage FIVE_DIGITS = Percentage.withPercentage(1e-3);

    static Stream<List<PublishedRow>> cases() {
        Map<String, List<PublishedRow>> cases = PublishedTable.rows("cramer-rao/bounds.csv")
                .collect(Collectors.groupingBy(PublishedRow::title, LinkedHashMap::new, Collectors.toList()));
        return cases.values().stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void agreesWithTheWholeInformationMatrix(List<PublishedRow> modes) {
        PublishedRow scene = modes.get(0);
        List<Complex> poles = modes.stream()
                .map(m -> TrueMode.resonator(m.number("frequency_hz"), m.number("q"), 1)
                        .pole())
                .toList();
        List<CramerRao.Bound> bounds = CramerRao.of(
                poles, strikes(modes), scene.number("rate_hz"), scene.whole("samples"), scene.number("noise_rms"));
        for (int m = 0; m < modes.size(); m++) {
            PublishedRow mode = modes.get(m);
            CramerRao.Bound bound = bounds.get(m);
            assertThat(bound.frequencyHz()).isCloseTo(mode.number("frequency_bound_hz"), FIVE_DIGITS);
            assertThat(bound.q()).isCloseTo(mode.number("q_bound"), FIVE_DIGITS);
            assertThat(bound.decayTimeSeconds()).isCloseTo(mode.number("decay_time_bound_s"), FIVE_DIGITS);
        }
    }

    /** Each mode's row lists real and imaginary part for strike after strike. */
    private static List<List<Complex>> strikes(List<PublishedRow> modes) {
        List<String[]> parts =
                modes.stream().map(m -> m.text("amplitudes").split(" ", -1)).toList();
        List<List<Complex>> strikes = new ArrayList<>();
        for (int i = 0; i < parts.get(0).length; i += 2) {
            int at = i;
            strikes.add(parts.stream()
                    .map(p -> new Complex(Double.parseDouble(p[at]), Double.parseDouble(p[at + 1])))
                    .toList());
        }
        return strikes;
    }
}
