package io.github.tapwright.exchange;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.comparison.HumiditySensitivities;
import io.github.tapwright.mode.ModeName;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** How far humidity moves each resonance, as JSON. */
final class SensitivityJson {

    /** One resonance; one without a name stands for all that have none. */
    private record Row(Optional<ModeName> mode, HumiditySensitivity sensitivity, String words) {}

    private static final List<Field<Row>> ROW = List.of(
            Field.maybe("resonance", r -> r.mode().map(ModeName::words)),
            Field.of("percent_per_point_of_humidity", r -> r.sensitivity().percentPerPoint()),
            Field.of("percent_per_point_u", r -> r.sensitivity().standardUncertainty()),
            Field.of("basis", r -> r.sensitivity().basis().name().toLowerCase(Locale.ROOT)),
            Field.of("basis_words", Row::words),
            Field.of("sittings", r -> r.sensitivity().sittings()));

    private SensitivityJson() {}

    /** One object for each name, and last one with "resonance" null for all resonances without. */
    static List<Map<String, @Nullable Object>> of(HumiditySensitivities sensitivities) {
        Stream<Optional<ModeName>> modes =
                Stream.concat(Arrays.stream(ModeName.values()).map(Optional::of), Stream.of(Optional.empty()));
        return JsonText.array(
                ROW,
                modes.map(m -> new Row(m, sensitivities.of(m), sensitivities.basis(m)))
                        .toList());
    }
}
