package io.github.tapwright.note;

import java.util.Optional;
import java.util.function.Function;

/**
 * Something looked for: found, or not found and why.
 *
 * @param <T> what is looked for
 */
public sealed interface Finding<T> {

    /**
     * It was found.
     *
     * @param <T> what was looked for
     * @param value the finding
     */
    record Found<T>(T value) implements Finding<T> {}

    /**
     * The recording does not carry it.
     *
     * @param <T> what was looked for
     * @param reason one line for the maker
     */
    record NotFound<T>(String reason) implements Finding<T> {}

    /**
     * The value alone.
     *
     * @return the finding, empty if there is none
     */
    default Optional<T> found() {
        return this instanceof Found<T> found ? Optional.of(found.value()) : Optional.empty();
    }

    /**
     * Why nothing was found.
     *
     * @return the reason, empty if something was found
     */
    default Optional<String> refusal() {
        return this instanceof NotFound<T> missing ? Optional.of(missing.reason()) : Optional.empty();
    }

    /**
     * What follows from the finding; a refusal stays the refusal it was.
     *
     * @param <R> what follows
     * @param next applied to the value
     * @return the next finding
     */
    default <R> Finding<R> map(Function<? super T, ? extends R> next) {
        if (this instanceof Found<T> found) {
            return new Found<>(next.apply(found.value()));
        }
        return new NotFound<>(((NotFound<T>) this).reason());
    }
}
