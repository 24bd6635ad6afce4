package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/** Comparing plucks: a classical worked example, coverage, and saying when there are too few. */
class PluckComparisonReferenceTest {

    private static Pluck pluck(int string, double levelDb) {
        return new Pluck(
                0, 0, Optional.of(string), Optional.of(levelDb), Optional.empty(), Optional.empty(), List.of());
    }

    private static List<Pluck> plucks(int string, double... levelsDb) {
        List<Pluck> plucks = new ArrayList<>();
        for (double level : levelsDb) {
            plucks.add(pluck(string, level));
        }
        return plucks;
    }

    private static PluckComparison compare(List<Pluck> a, List<Pluck> b) {
        return PluckComparison.of("dB", Optional.of(1.0), a, b, Pluck::lafMaxDb);
    }

    /**
     * Student's sleep data taken as unpaired [Student1908]: difference 1.58, 17.776 degrees of freedom, 95 % interval
     * from −0.205 to 3.365 by Welch's method. Tolerances: the last printed digit.
     */
    @Test
    void studentsSleepData() {
        Estimate difference = compare(
                        plucks(1, 0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0),
                        plucks(1, 1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4))
                .strings()
                .get(0)
                .difference()
                .orElseThrow();
        assertThat(difference.value()).isCloseTo(1.58, within(1e-9));
        assertThat(difference.degreesOfFreedom()).isCloseTo(17.776, within(0.0005));
        assertThat(difference.value() + difference.halfWidth95()).isCloseTo(3.365, within(0.0008));
        assertThat(difference.value() - difference.halfWidth95()).isCloseTo(-0.205, within(0.0008));
    }

    /** Asked one by one, six strings find a difference in a quarter of all runs of one guitar with itself. */
    @Test
    void sixStringsAskedAtOnceRaiseNoMoreAlarmsThanOne() {
        RandomGenerator chance = Chance.seeded(32);
        int alone = 0;
        int allAsked = 0;
        for (int trial = 0; trial < 500; trial++) {
            List<Pluck> a = new ArrayList<>();
            List<Pluck> b = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                a.add(pluck(1 + i % 6, -20 + 0.6 * chance.nextGaussian()));
                b.add(pluck(1 + i % 6, -20 + 0.6 * chance.nextGaussian()));
            }
            List<PluckComparison.OnString> strings = compare(a, b).strings();
            alone += strings.stream().anyMatch(s -> s.probability().orElseThrow() < 0.05) ? 1 : 0;
            allAsked += strings.stream().anyMatch(s -> s.adjustedProbability().orElseThrow() < 0.05) ? 1 : 0;
        }
        assertThat(alone).isBetween(500 * 18 / 100, 500 * 34 / 100);
        // 5 % of 500 is 25, its standard deviation 4.9
        assertThat(allAsked).isLessThan(25 + 3 * 5);
    }

    @Test
    void intervalsHoldTheTruth() {
        RandomGenerator chance = Chance.seeded(31);
        int inside = 0;
        int overall = 0;
        for (int trial = 0; trial < 500; trial++) {
            List<Pluck> a = new ArrayList<>();
            List<Pluck> b = new ArrayList<>();
            for (int string = 1; string <= 6; string++) {
                for (int i = 0; i < 5; i++) {
                    a.add(pluck(string, -20 + string + 0.6 * chance.nextGaussian()));
                    b.add(pluck(string, -19.2 + string + 1.2 * chance.nextGaussian()));
                }
            }
            PluckComparison comparison = compare(a, b);
            Estimate first = comparison.strings().get(0).difference().orElseThrow();
            Estimate all = comparison.overall().orElseThrow();
            inside += Math.abs(first.value() - 0.8) <= first.halfWidth95() ? 1 : 0;
            overall += Math.abs(all.value() - 0.8) <= all.halfWidth95() ? 1 : 0;
        }
        assertThat(inside / 500.0).isBetween(0.92, 0.98);
        assertThat(overall / 500.0).isBetween(0.92, 0.98);
    }

    @Test
    void saysHowManyPlucksWouldTellOneDecibel() {
        PluckComparison.OnString string = compare(plucks(2, -20, -18, -22), plucks(2, -19, -21, -17))
                .strings()
                .get(0);
        assertThat(string.difference().orElseThrow().halfWidth95()).isGreaterThan(1);
        // s = 2 dB on either side: ±1 dB needs t·2·√(2/n) ≤ 1, n = 32 by tables of Student's t
        assertThat(string.plucksNeeded()).hasValueSatisfying(n -> assertThat(n).isBetween(31, 33));
    }

    @Test
    void onePluckTellsNothing() {
        PluckComparison comparison = compare(plucks(1, -20), plucks(1, -25, -25.5));
        assertThat(comparison.strings().get(0).difference()).isEmpty();
        assertThat(comparison.overall()).isEmpty();
    }

    @Test
    void stringsOnlyOneInstrumentHasAreLeftOut() {
        PluckComparison comparison = compare(
                List.of(pluck(1, -20), pluck(1, -21), pluck(2, -19), pluck(2, -18)),
                List.of(pluck(2, -19.5), pluck(2, -18)));
        assertThat(comparison.strings()).hasSize(1);
        assertThat(comparison.strings().get(0).string()).isEqualTo(2);
    }
}
