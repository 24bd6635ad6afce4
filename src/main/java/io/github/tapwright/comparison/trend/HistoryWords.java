package io.github.tapwright.comparison.trend;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.comparison.HumiditySensitivities;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The figures of an instrument's sittings as people read them. */
public final class HistoryWords {

    /** What stands after the ± of a figure, and what its bar in a picture shows. */
    public static final String BARS =
            "95 % interval of one sitting, setting up again and the correction to the common air included";

    private HistoryWords() {}

    /**
     * The air figures are corrected to.
     *
     * @param history whose
     * @return such as "the common air of 45.0 % and 21 °C"
     */
    public static String air(History history) {
        Air air = history.air().air();
        String known = Stream.concat(
                        air.relativeHumidityPercent().map(h -> Figures.text(h, 1) + " %").stream(),
                        air.temperatureCelsius().map(t -> Figures.plain(Math.round(10 * t) / 10.0) + " °C").stream())
                .collect(Collectors.joining(" and "));
        return "the common air" + (known.isEmpty() ? "" : " of " + known);
    }

    /**
     * How much of what is seen setting up again makes.
     *
     * @param history whose
     * @return such as "setting up alone moves figures by 0.3 % of frequency and 5 % of Q (one standard deviation), assumed, not measured
     *     on this bench"
     */
    public static String settingUp(History history) {
        SetUpSpread spread = history.bench().spread();
        return "setting up alone moves figures by " + spread.words(Quantity.FREQUENCY) + " of frequency and "
                + spread.words(Quantity.Q) + " of Q (one standard deviation), "
                + spread.basisWords(List.of(Quantity.FREQUENCY, Quantity.Q)) + plucks(history);
    }

    /**
     * How far each resonance was taken to move with humidity, and how that is known.
     *
     * @param history whose
     * @return such as "humidity is taken to move main top by −0.1960 ± 0.0090 (learnt from 8 sittings of this instrument) % of its frequency
     *     a point …"; empty where nothing was corrected for it
     */
    public static Optional<String> humidity(History history) {
        HumiditySensitivities sensitivities = history.bench().sensitivities();
        Map<String, String> byBasis = history.series().stream()
                .filter(s -> s.subject().quantity() == Quantity.FREQUENCY)
                .filter(s -> s.figures().stream().anyMatch(f -> f.added("humidity") != 0))
                .map(s -> s.subject().resonance())
                .collect(Collectors.groupingBy(
                        sensitivities::basis,
                        LinkedHashMap::new,
                        Collectors.mapping(m -> moved(m, sensitivities), Collectors.joining(", "))));
        return byBasis.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "effect of humidity taken out, % of frequency a point of relative humidity (± one standard uncertainty): "
                                + byBasis.entrySet().stream()
                                        .map(e -> e.getValue() + ", " + e.getKey())
                                        .collect(Collectors.joining("; ")));
    }

    private static String moved(Optional<ModeName> mode, HumiditySensitivities sensitivities) {
        HumiditySensitivity k = sensitivities.of(mode);
        return mode.map(ModeName::words).orElse("others") + " "
                + Figures.text(Estimate.of(k.percentPerPoint(), k.standardUncertainty()));
    }

    private static String plucks(History history) {
        SetUpSpread spread = history.bench().spread(Subject.PLUCKS);
        return history.hasPlucks()
                ? "; plucking again moves levels by " + spread.words(Quantity.LEVEL) + ", "
                        + spread.level().basis().words()
                : "";
    }

    /**
     * A figure as it was measured.
     *
     * @param series whose
     * @param figure one of its figures
     * @return such as "194.89"
     */
    public static String measured(Series series, SittingFigure figure) {
        return Figures.text(figure.measured(), series.subject().quantity() == Quantity.DECAY_TIME ? 3 : 2);
    }

    /**
     * A figure in the common air with half its 95 % interval.
     *
     * @param series whose
     * @param figure one of its figures
     * @param history whose bench and air
     * @return such as "192.2 ± 3.7"
     */
    public static String corrected(Series series, SittingFigure figure, History history) {
        Estimate found = figure.inCommonAir(series.subject(), history.bench());
        return Figures.text(Estimate.of(found.value(), found.halfWidth95()));
    }
}
