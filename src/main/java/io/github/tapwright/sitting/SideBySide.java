package io.github.tapwright.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Does the same work to many things, one after another or several at once.
 *
 * <p>The work must not depend on what is done to the others; then the results are the same to the last bit either way.
 */
public interface SideBySide {

    /** One after another. */
    SideBySide ONE_BY_ONE = new SideBySide() {
        @Override
        public <T, R> List<R> each(List<T> things, Function<? super T, ? extends R> work) {
            return things.stream().<R>map(work).toList();
        }
    };

    /** As many at once as there are processors. */
    SideBySide ALL_PROCESSORS = new SideBySide() {
        @Override
        public <T, R> List<R> each(List<T> things, Function<? super T, ? extends R> work) {
            return things.parallelStream().<R>map(work).toList();
        }
    };

    /**
     * Does the work.
     *
     * @param <T> what is worked on
     * @param <R> what comes of it
     * @param things in order
     * @param work done once to each
     * @return one for each, in the same order
     */
    <T, R> List<R> each(List<T> things, Function<? super T, ? extends R> work);

    /**
     * Does the work to lots of things; while one lot is worked on, the next is fetched, so that neither waits for the other.
     *
     * @param <T> what is worked on
     * @param <R> what comes of it
     * @param next fetches the next lot, never twice at once; an empty one is the last
     * @param work done once to each
     * @return one for each, in the same order
     */
    default <T, R> List<R> lots(Supplier<List<T>> next, Function<? super T, ? extends R> work) {
        List<R> done = new ArrayList<>();
        List<T> lot = next.get();
        while (!lot.isEmpty()) {
            List<T> later = new ArrayList<>();
            List<Supplier<List<R>>> jobs = new ArrayList<>();
            jobs.add(() -> {
                later.addAll(next.get());
                return List.of();
            });
            lot.forEach(thing -> jobs.add(() -> List.of(work.apply(thing))));
            each(jobs, Supplier::get).forEach(done::addAll);
            lot = later;
        }
        return done;
    }
}
