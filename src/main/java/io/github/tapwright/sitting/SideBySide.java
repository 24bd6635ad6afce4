package io.github.tapwright.sitting;

import java.util.List;
import java.util.function.Function;

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
}
