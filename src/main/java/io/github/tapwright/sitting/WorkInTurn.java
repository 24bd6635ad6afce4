package io.github.tapwright.sitting;

import java.util.Iterator;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Several at work on one row of things: whoever is free takes the next, so none waits while there is work.
 *
 * <p>What is fetched for one is not fetched for another; so no more things are at hand at once than there are processors, and
 * not more than {@value #MOST} however many there are: a minute of sound is not small.
 */
final class WorkInTurn<T, R> {

    private static final int MOST = 8;

    private final Iterator<? extends T> things;
    private final Function<? super T, ? extends R> work;
    private final NavigableMap<Integer, R> done = new ConcurrentSkipListMap<>();
    private final NavigableMap<Integer, Throwable> troubles = new ConcurrentSkipListMap<>();
    private int taken;

    WorkInTurn(Iterator<? extends T> things, Function<? super T, ? extends R> work) {
        this.things = things;
        this.work = work;
    }

    private record Turn<T>(int place, T thing) {}

    /** One result for each thing, in order; of several troubles the one that came first in the row is thrown. */
    List<R> byAll() {
        int workers = Math.min(MOST, ForkJoinPool.getCommonPoolParallelism() + 1);
        IntStream.range(0, workers).parallel().forEach(worker -> takeTurns());
        if (!troubles.isEmpty()) {
            Throwable first = troubles.firstEntry().getValue();
            if (first instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) first;
        }
        return List.copyOf(done.values());
    }

    private void takeTurns() {
        for (Optional<Turn<T>> turn = next(); turn.isPresent(); turn = next()) {
            int place = turn.get().place;
            try {
                done.put(place, work.apply(turn.get().thing));
            } catch (RuntimeException | Error trouble) {
                troubles.put(place, trouble);
            }
        }
    }

    /** Trouble is kept, not thrown: nobody may still be reading when the recording is closed over it. */
    private synchronized Optional<Turn<T>> next() {
        try {
            return troubles.isEmpty() && things.hasNext()
                    ? Optional.of(new Turn<>(taken++, things.next()))
                    : Optional.empty();
        } catch (RuntimeException | Error trouble) {
            troubles.put(taken, trouble);
            return Optional.empty();
        }
    }
}
