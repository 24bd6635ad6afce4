package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SideBySideTest {

    private static final List<List<Integer>> LOTS =
            List.of(List.of(3, 1, 4), List.of(1), List.of(5, 9, 2, 6), List.of());

    @Test
    void lotsComeOutInOrderHoweverTheyAreWorked() {
        for (SideBySide how : List.of(SideBySide.ONE_BY_ONE, SideBySide.ALL_PROCESSORS)) {
            Iterator<List<Integer>> lots = LOTS.iterator();
            assertThat(how.lots(lots::next, i -> 10 * i)).containsExactly(30, 10, 40, 10, 50, 90, 20, 60);
        }
    }

    @Test
    void noLotsAreNoWork() {
        assertThat(SideBySide.ALL_PROCESSORS.lots(List::<Integer>of, i -> i)).isEmpty();
    }

    @Test
    void troubleWhileFetchingIsTold() {
        Iterator<List<Integer>> lots =
                List.of(IntStream.range(0, 50).boxed().toList()).iterator();
        assertThatThrownBy(() -> SideBySide.ALL_PROCESSORS.lots(
                        () -> {
                            if (lots.hasNext()) {
                                return lots.next();
                            }
                            throw new UnreadableRecordingException("damaged here");
                        },
                        i -> i))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining("damaged here");
    }
}
