package io.github.tapwright.sitting;

import java.util.ArrayList;
import java.util.Iterator;
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
        public <T, R> List<R> each(Iterator<? extends T> things, Function<? super T, ? extends R> work) {
            List<R> done = new ArrayList<>();
            things.forEachRemaining(thing -> done.add(work.apply(thing)));
            return List.copyOf(done);
        }
    };

    /** As many at once as there are processors; whoever is free takes the next. */
    SideBySide ALL_PROCESSORS = new SideBySide() {
        @Override
        public <T, R> List<R> each(Iterator<? extends T> things, Function<? super T, ? extends R> work) {
            return new WorkInTurn<T, R>(things, work).byAll();
        }
    };

    /**
     * Does the work to things that are fetched one by one, never two at once, each only when somebody is free for it.
     *
     * @param <T> what is worked on
     * @param <R> what comes of it
     * @param things in order
     * @param work done once to each
     * @return one for each, in the same order
     */
    <T, R> List<R> each(Iterator<? extends T> things, Function<? super T, ? extends R> work);
}
