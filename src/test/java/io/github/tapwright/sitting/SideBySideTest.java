package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SideBySideTest {

    static List<SideBySide> ways() {
        return List.of(SideBySide.ONE_BY_ONE, SideBySide.ALL_PROCESSORS);
    }

    @ParameterizedTest
    @MethodSource("ways")
    void resultsComeInTheOrderOfTheThings(SideBySide how) {
        List<Integer> things = IntStream.range(0, 200).boxed().toList();
        assertThat(how.each(things.iterator(), i -> 10 * i))
                .containsExactlyElementsOf(things.stream().map(i -> 10 * i).toList());
    }

    @ParameterizedTest
    @MethodSource("ways")
    void nothingIsNoWork(SideBySide how) {
        assertThat(how.each(List.<Integer>of().iterator(), i -> i)).isEmpty();
    }

    /** Else a long recording would lie in memory whole. */
    @ParameterizedTest
    @MethodSource("ways")
    void nothingIsFetchedBeforeSomebodyIsFreeForIt(SideBySide how) {
        AtomicInteger atHand = new AtomicInteger();
        Iterator<Integer> counted =
                IntStream.range(0, 200).map(i -> atHand.incrementAndGet()).iterator();
        List<Integer> found = how.each(counted, i -> atHand.getAndDecrement());
        assertThat(found).hasSize(200).allMatch(n -> n <= Runtime.getRuntime().availableProcessors() + 1);
    }

    @ParameterizedTest
    @MethodSource("ways")
    void troubleWhileFetchingIsTold(SideBySide how) {
        Iterator<Integer> damaged =
                IntStream.range(0, 50).map(SideBySideTest::upTo40).iterator();
        assertThatThrownBy(() -> how.each(damaged, i -> i))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining("damaged here");
    }

    @ParameterizedTest
    @MethodSource("ways")
    void ofTroublesAtWorkTheFirstInTheRowIsTold(SideBySide how) {
        assertThatThrownBy(() -> how.each(IntStream.range(30, 90).iterator(), SideBySideTest::upTo40))
                .isInstanceOf(UnreadableRecordingException.class)
                .hasMessageContaining("damaged here: 40");
    }

    /** The trouble at 41 is there first, and that at 40 is told; nobody is at work any more by then, whatever the trouble is. */
    @Test
    void allAreDoneBeforeTheTroubleOfTheFirstIsTold() {
        CountDownLatch later = new CountDownLatch(ForkJoinPool.getCommonPoolParallelism() > 0 ? 1 : 0);
        AtomicInteger working = new AtomicInteger();
        assertThatThrownBy(() ->
                        SideBySide.ALL_PROCESSORS.each(List.of(40, 41, 42, 43).iterator(), i -> {
                            working.incrementAndGet();
                            try {
                                if (i == 40) {
                                    later.await();
                                }
                                later.countDown();
                                throw new OutOfMemoryError("at " + i);
                            } catch (InterruptedException e) {
                                throw new IllegalStateException(e);
                            } finally {
                                working.decrementAndGet();
                            }
                        }))
                .isInstanceOf(OutOfMemoryError.class)
                .hasMessage("at 40");
        assertThat(working).hasValue(0);
    }

    private static int upTo40(int i) {
        if (i >= 40) {
            throw new UnreadableRecordingException("damaged here: " + i);
        }
        return i;
    }
}
