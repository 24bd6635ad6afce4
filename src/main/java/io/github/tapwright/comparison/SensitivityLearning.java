package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumidityHistory;
import io.github.tapwright.climate.HumidityScale;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import java.util.List;
import java.util.Optional;

/**
 * Learns how far humidity moves an instrument's main top from its own history.
 *
 * <p>Only strung sittings of taps with the hole not covered count: finish and strings move the main top by themselves. What one
 * instrument does says little about another, so for two instruments nothing is learnt and what is assumed stands.
 */
public final class SensitivityLearning {

    private static final HumidityHistory NOTHING = new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, List.of());

    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     */
    public SensitivityLearning(SittingStore sittings) {
        this.sittings = sittings;
    }

    HumiditySensitivity of(ShopNumber first, ShopNumber second) {
        return first.equals(second) ? of(first) : HumiditySensitivity.of(NOTHING);
    }

    /**
     * What one instrument's history tells.
     *
     * @param instrument whose
     * @return learnt or assumed, and says which
     */
    public HumiditySensitivity of(ShopNumber instrument) {
        List<SittingSummary> counting = sittings.list(Optional.of(instrument)).stream()
                .filter(SensitivityLearning::counts)
                .toList();
        List<HumidityHistory.Point> points =
                SharedRecordings.once(counting, SittingSummary::id, sittings.sharing(), (copy, earlier) -> {}).stream()
                        .flatMap(s -> point(s).stream())
                        .toList();
        return HumiditySensitivity.of(new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, points));
    }

    private static boolean counts(SittingSummary sitting) {
        return sitting.tapsTheBodyAsItIs()
                && sitting.stage().map(StageClass::of).equals(Optional.of(StageClass.STRUNG));
    }

    private static Optional<HumidityHistory.Point> point(SittingSummary sitting) {
        List<Double> mainTopHz = sitting.resonances().stream()
                .filter(r -> r.name().equals(Optional.of(ModeName.MAIN_TOP.words())))
                .map(SittingSummary.Line::frequencyHz)
                .toList();
        return sitting.air()
                .relativeHumidityPercent()
                .filter(h -> mainTopHz.size() == 1)
                .map(h -> new HumidityHistory.Point(h, mainTopHz.get(0)));
    }
}
