package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SecondOrderSection;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The weightings against [IEC61672-1], table 3 and annex E. */
class FrequencyWeightingReferenceTest {

    /** Tolerance: half a unit of the last digit of the table's unrounded values. */
    @Test
    void formulaGivesTheUnroundedTable() {
        for (WeightingTable row : WeightingTable.ROWS) {
            assertThat(FrequencyWeighting.A.decibels(row.frequencyHz())).isCloseTo(row.exactA(), within(0.00051));
            assertThat(FrequencyWeighting.C.decibels(row.frequencyHz())).isCloseTo(row.exactC(), within(0.00051));
            assertThat(FrequencyWeighting.A.decibels(row.frequencyHz())).isCloseTo(row.roundedA(), within(0.0501));
            assertThat(FrequencyWeighting.C.decibels(row.frequencyHz())).isCloseTo(row.roundedC(), within(0.0501));
            assertThat(FrequencyWeighting.Z.decibels(row.frequencyHz())).isZero();
        }
    }

    /** The pole frequencies as printed in annex E. */
    @Test
    void poles() {
        assertThat(WeightingPoles.F1_HZ).isCloseTo(20.60, within(0.005));
        assertThat(WeightingPoles.F2_HZ).isCloseTo(107.7, within(0.05));
        assertThat(WeightingPoles.F3_HZ).isCloseTo(737.9, within(0.05));
        assertThat(WeightingPoles.F4_HZ).isCloseTo(12_194, within(0.5));
    }

    /** The digital filters over the whole table; every row lies below half of these rates. */
    @ParameterizedTest
    @ValueSource(doubles = {44_100, 48_000, 88_200, 96_000, 192_000})
    void filtersMeetClassOneOverTheWholeTable(double rateHz) {
        assertThat(WeightingTable.ROWS.get(33).frequencyHz()).isLessThan(rateHz / 2);
        for (FrequencyWeighting weighting : FrequencyWeighting.values()) {
            for (WeightingTable row : WeightingTable.ROWS) {
                double error = gainDb(weighting, row.frequencyHz(), rateHz) - rounded(weighting, row);
                assertThat(error)
                        .as("%s at %.1f Hz and %.0f Hz", weighting, row.frequencyHz(), rateHz)
                        .isBetween(-row.below(), row.above());
            }
        }
    }

    /** Tighter than the standard asks, so that a spoilt design cannot hide in its limits. */
    @ParameterizedTest
    @CsvSource({
        "16000, 0.25",
        "22050, 0.25",
        "32000, 0.3",
        "44100, 0.23",
        "48000, 0.23",
        "88200, 0.05",
        "96000, 0.05",
        "192000, 0.05"
    })
    void filtersStayCloseToTheFormula(double rateHz, double toleranceDb) {
        double top = Math.min(20_000, 0.95 * rateHz / 2);
        for (FrequencyWeighting weighting : List.of(FrequencyWeighting.A, FrequencyWeighting.C)) {
            double largest = IntStream.range(0, 1000)
                    .mapToDouble(k -> 10 * Math.pow(top / 10, k / 999.0))
                    .map(f -> Math.abs(gainDb(weighting, f, rateHz) - weighting.decibels(f)))
                    .max()
                    .orElseThrow();
            System.out.printf(
                    "weighting %s at %.0f Hz: within %.3f dB from 10 Hz to %.0f Hz%n", weighting, rateHz, largest, top);
            assertThat(largest).isLessThan(toleranceDb);
        }
    }

    @ParameterizedTest
    @EnumSource
    void ratesWithoutAKilohertzAreRefused(FrequencyWeighting weighting) {
        assertThatThrownBy(() -> weighting.sections(new SampleRate(2000))).hasMessageContaining("8000 Hz or more");
    }

    private static double rounded(FrequencyWeighting weighting, WeightingTable row) {
        return switch (weighting) {
            case A -> row.roundedA();
            case C -> row.roundedC();
            case Z -> 0;
        };
    }

    private static double gainDb(FrequencyWeighting weighting, double frequencyHz, double rateHz) {
        double power = 1;
        for (SecondOrderSection section : weighting.sections(new SampleRate(rateHz))) {
            power *= section.powerGain(frequencyHz, rateHz);
        }
        return 10 * Math.log10(power);
    }
}
