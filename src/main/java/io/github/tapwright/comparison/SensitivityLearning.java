package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumidityHistory;
import io.github.tapwright.climate.HumidityScale;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.SensitivityBasis;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Median;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Learns how far humidity moves each named resonance of an instrument from that resonance's own history.
 *
 * <p>Only strung sittings of taps with the hole not covered count: finish and strings move resonances by themselves. What one
 * instrument does says little about another, so for two instruments nothing is learnt and what is assumed stands. Warm air raises the main
 * air, and summers are damp: of it only sittings of known temperature count, brought to one temperature first. Time is set beside
 * humidity, and where humidity ran with time nothing is learnt, see {@link HumiditySensitivity}: a drift would be taken for humidity, and
 * whoever compares or follows the instrument would not find it.
 */
public final class SensitivityLearning {

    private static final double SECONDS_A_DAY = 86_400;

    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     */
    public SensitivityLearning(SittingStore sittings) {
        this.sittings = sittings;
    }

    HumiditySensitivities of(ShopNumber first, ShopNumber second) {
        return first.equals(second) ? of(first) : HumiditySensitivities.ASSUMED;
    }

    /**
     * What one instrument's history tells.
     *
     * @param instrument whose
     * @return learnt or assumed for each resonance, and says which
     */
    public HumiditySensitivities of(ShopNumber instrument) {
        List<SittingSummary> counting = sittings.list(Optional.of(instrument)).stream()
                .filter(SensitivityLearning::counts)
                .toList();
        List<SittingSummary> once =
                SharedRecordings.once(counting, SittingSummary::id, sittings.sharing(), (copy, earlier) -> {});
        Map<ModeName, HumiditySensitivity> told = Arrays.stream(ModeName.values())
                .collect(Collectors.toMap(Function.identity(), m -> told(m, points(m, once))));
        return HumiditySensitivities.learnt(told);
    }

    private static boolean counts(SittingSummary sitting) {
        return sitting.tapsTheBodyAsItIs()
                && sitting.stage().map(StageClass::of).equals(Optional.of(StageClass.STRUNG));
    }

    /** A resonance in the air of one sitting, its humidity known. */
    private record Point(Instant at, Air air, double frequencyHz) {

        /** As it would have been at another temperature; empty if its own is not known or out of range. */
        Optional<Double> at(double celsius, double airShare) {
            Air reference = new Air(Optional.of(celsius), air.relativeHumidityPercent());
            return ClimateCorrection.atTemperature(frequencyHz, air, reference, airShare);
        }

        HumidityHistory.Point moved(double hz) {
            return new HumidityHistory.Point(
                    at.getEpochSecond() / SECONDS_A_DAY,
                    air.relativeHumidityPercent().orElseThrow(),
                    hz);
        }
    }

    private static List<Point> points(ModeName mode, List<SittingSummary> sittings) {
        return sittings.stream()
                .filter(s -> s.air().relativeHumidityPercent().isPresent())
                .flatMap(s -> frequency(mode, s).map(hz -> new Point(s.takenAt().instant(), s.air(), hz)).stream())
                .toList();
    }

    /** Empty where two resonances bear the name. */
    private static Optional<Double> frequency(ModeName mode, SittingSummary sitting) {
        List<Double> hz = sitting.resonances().stream()
                .filter(r -> r.name().equals(Optional.of(mode.words())))
                .map(SittingSummary.Line::frequencyHz)
                .toList();
        return hz.size() == 1 ? Optional.of(hz.get(0)) : Optional.empty();
    }

    private static HumiditySensitivity told(ModeName mode, List<Point> points) {
        return mode == ModeName.MAIN_AIR
                ? ofAir(points)
                : of(points.stream().map(p -> p.moved(p.frequencyHz())).toList());
    }

    /** The air's share in what temperature does is itself not sure: what it could be wrong by is part of the slope's u. */
    private static HumiditySensitivity ofAir(List<Point> points) {
        HumiditySensitivity usual = atOneTemperature(points, ClimateCorrection.AIR_SHARE);
        HumiditySensitivity other =
                atOneTemperature(points, ClimateCorrection.AIR_SHARE + ClimateCorrection.AIR_SHARE_UNCERTAINTY);
        return usual.basis() == SensitivityBasis.LEARNT
                ? usual.lessSureBy(other.percentPerPoint() - usual.percentPerPoint())
                : usual;
    }

    private static HumiditySensitivity atOneTemperature(List<Point> points, double airShare) {
        double[] celsius = points.stream()
                .flatMap(p -> p.air().temperatureCelsius().stream())
                .mapToDouble(t -> t)
                .toArray();
        return celsius.length == 0
                ? of(List.of())
                : of(points.stream()
                        .flatMap(p -> p.at(Median.of(celsius), airShare).map(p::moved).stream())
                        .toList());
    }

    private static HumiditySensitivity of(List<HumidityHistory.Point> points) {
        return HumiditySensitivity.of(new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, points));
    }
}
