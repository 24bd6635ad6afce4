package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumidityHistory;
import io.github.tapwright.climate.HumidityScale;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.SensitivityBasis;
import io.github.tapwright.mode.ModeName;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * How far humidity moves each resonance of an instrument.
 *
 * <p>Each has its own: top and back are different woods of different thickness, and in the main air the wood takes part by 1 − s, what the
 * share s of the air leaves. What is learnt of one is not lent to another, as nobody has published how alike they are; where a resonance's
 * own history does not suffice, what is assumed stands.
 *
 * @param named of the resonances that have a name; one that is missing is taken as assumed
 */
public record HumiditySensitivities(Map<ModeName, HumiditySensitivity> named) {

    /** What is assumed for every instrument. */
    public static final HumiditySensitivities ASSUMED = learnt(Map.of());

    private static final String BARE_SPRUCE =
            "assumed for bare spruce, an estimate and not measured on this instrument";
    private static final String BARE_SPRUCE_IN_MAIN_AIR =
            BARE_SPRUCE + ", of which the main air takes " + ClimateCorrection.WOOD_SHARE_WORDS;

    private static final String DRIFT_APART = "a steady drift set apart";
    private static final String RAN_WITH_TIME = " humidity ran with time, and a drift would be learnt as humidity";

    /** Keeps a copy. */
    public HumiditySensitivities {
        named = Map.copyOf(named);
    }

    /** What histories of single resonances tell; one that is missing tells nothing. */
    static HumiditySensitivities learnt(Map<ModeName, HumiditySensitivity> histories) {
        HumiditySensitivity nothing = ofWood();
        return new HumiditySensitivities(Arrays.stream(ModeName.values())
                .collect(Collectors.toMap(Function.identity(), m -> own(m, histories.getOrDefault(m, nothing)))));
    }

    private static HumiditySensitivity own(ModeName mode, HumiditySensitivity told) {
        return mode == ModeName.MAIN_AIR && told.basis() != SensitivityBasis.LEARNT
                ? told.inShare(1 - ClimateCorrection.AIR_SHARE, ClimateCorrection.AIR_SHARE_UNCERTAINTY)
                : told;
    }

    private static HumiditySensitivity ofWood() {
        return HumiditySensitivity.of(new HumidityHistory(HumidityScale.RELATIVE_HUMIDITY, List.of()));
    }

    /**
     * How far humidity moves one resonance.
     *
     * @param mode which; empty for one without a name
     * @return learnt from this very resonance, or assumed
     */
    public HumiditySensitivity of(Optional<ModeName> mode) {
        return mode.map(named::get).orElseGet(HumiditySensitivities::ofWood);
    }

    /**
     * How one resonance's sensitivity is known.
     *
     * @param mode which; empty for one without a name
     * @return such as "learnt from 8 sittings of this instrument, a steady drift set apart"
     */
    public String basis(Optional<ModeName> mode) {
        HumiditySensitivity sensitivity = of(mode);
        if (isLearnt(sensitivity)) {
            return "learnt from " + sensitivity.sittings() + " sittings of this instrument, " + DRIFT_APART;
        }
        String assumed = mode.equals(Optional.of(ModeName.MAIN_AIR)) ? BARE_SPRUCE_IN_MAIN_AIR : BARE_SPRUCE;
        return ranWithTime(sensitivity)
                ? assumed + "; in its " + sensitivity.sittings() + " sittings" + RAN_WITH_TIME
                : assumed;
    }

    /**
     * How all of them are known.
     *
     * @return such as "learnt from this instrument for main top and main back, a steady drift set apart, for others assumed for
     *     bare spruce …"
     */
    String basis() {
        String learnt = listed(HumiditySensitivities::isLearnt);
        String ran = listed(HumiditySensitivities::ranWithTime);
        return (learnt.isEmpty()
                        ? ""
                        : "learnt from this instrument for " + learnt + ", " + DRIFT_APART + ", for others ")
                + BARE_SPRUCE
                + (ran.isEmpty() ? "" : "; in its sittings with " + ran + RAN_WITH_TIME);
    }

    private String listed(Predicate<HumiditySensitivity> which) {
        return listed(Arrays.stream(ModeName.values())
                .filter(m -> which.test(of(Optional.of(m))))
                .map(ModeName::words)
                .toList());
    }

    private static boolean ranWithTime(HumiditySensitivity sensitivity) {
        return sensitivity.basis() == SensitivityBasis.ASSUMED_RAN_WITH_TIME;
    }

    private static boolean isLearnt(HumiditySensitivity sensitivity) {
        return sensitivity.basis() == SensitivityBasis.LEARNT;
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return words.size() < 2
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
