package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.chart.Labels.Extent;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LabelsTest {

    @Test
    void labelsWithRoomShareTheTopRow() {
        assertThat(Labels.rows(List.of(new Extent(0, 50), new Extent(60, 50)))).containsExactly(0, 0);
    }

    @Test
    void aLabelBesideAnotherGoesBelowIt() {
        assertThat(Labels.rows(List.of(new Extent(0, 50), new Extent(40, 50), new Extent(70, 50))))
                .containsExactly(0, 1, 2);
    }

    @Test
    void noLabelIsCoveredAndNoLeaderCrossesALabel() {
        Random random = new Random(20260314);
        for (int trial = 0; trial < 200; trial++) {
            List<Extent> extents = IntStream.range(0, 15)
                    .mapToObj(i -> new Extent(random.nextDouble() * 900, 40 + random.nextDouble() * 80))
                    .sorted((a, b) -> Double.compare(a.left(), b.left()))
                    .toList();
            assertThat(crossings(extents, Labels.rows(extents))).isZero();
        }
    }

    /** A label's leader runs down from its row, so it meets every label in its own row or below that spans its x. */
    private static long crossings(List<Extent> extents, List<Integer> rows) {
        return IntStream.range(0, extents.size())
                .boxed()
                .flatMap(i -> IntStream.range(0, extents.size())
                        .filter(j -> j != i && rows.get(j) >= rows.get(i))
                        .filter(j -> extents.get(j).left() <= extents.get(i).left()
                                && extents.get(j).reaches(extents.get(i).left()))
                        .boxed())
                .count();
    }
}
