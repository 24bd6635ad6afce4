package io.github.tapwright.comparison.listening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.sitting.listening.ListeningTrial;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class TrialPlanTest {

    @Test
    void aSeedMeansTheSameForEver() {
        assertThat(TrialPlan.of(42, 16, 3)).isEqualTo(TrialPlan.of(42, 16, 3));
        // written down once; an archive with this seed must go on with these questions
        assertThat(TrialPlan.of(42, 10, 2).stream()
                        .map(t -> (t.a() == 0 ? "0" : "1") + (t.xIsA() ? "a" : "b"))
                        .collect(Collectors.joining(" ")))
                .isEqualTo("0b 1a 0a 0a 1b 1b 0a 0a 1b 1b");
    }

    @Test
    void everyPairComesAsOftenAsAnyOtherOrOnceMore() {
        Map<Integer, Long> pairs = TrialPlan.of(7, 20, 4).stream()
                .collect(Collectors.groupingBy(
                        t -> 10 * Math.min(t.a(), t.b()) + Math.max(t.a(), t.b()), Collectors.counting()));

        assertThat(pairs).hasSize(6);
        assertThat(pairs.values()).allMatch(n -> n == 3 || n == 4);
    }

    @Test
    void coinsAreFairAndIndependent() {
        List<ListeningTrial> all = LongStream.range(0, 2000)
                .boxed()
                .flatMap(seed -> TrialPlan.of(seed * 7919, 16, 2).stream())
                .toList();

        // 32,000 fair coins: the standard deviation of the share is 0.0028, four of them are allowed
        assertThat(share(all.stream().map(ListeningTrial::xIsA).toList())).isCloseTo(0.5, within(0.0112));
        assertThat(share(all.stream().map(t -> t.a() == 0).toList())).isCloseTo(0.5, within(0.0112));
        assertThat(share(all.stream().map(t -> t.x() == 0).toList())).isCloseTo(0.5, within(0.0112));
        assertThat(share(all.stream().map(t -> t.xIsA() == (t.a() == 0)).toList()))
                .isCloseTo(0.5, within(0.0112));
    }

    private static double share(List<Boolean> coins) {
        return coins.stream().filter(c -> c).count() / (double) coins.size();
    }
}
