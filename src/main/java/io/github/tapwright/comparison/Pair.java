package io.github.tapwright.comparison;

import java.util.Optional;
import java.util.function.Function;

/** A condition in two sittings, either of which may be unknown. */
record Pair<T>(Optional<T> first, Optional<T> second) {

    static <S, T> Pair<T> of(S first, S second, Function<S, Optional<T>> of) {
        return new Pair<>(of.apply(first), of.apply(second));
    }

    boolean known() {
        return first.isPresent() && second.isPresent();
    }

    boolean same() {
        return known() && first.equals(second);
    }

    boolean differ() {
        return known() && !first.equals(second);
    }

    /** "open / covered", with "unknown" for what nobody wrote down. */
    String words(Function<T, String> words) {
        return first.map(words).orElse("unknown") + " / " + second.map(words).orElse("unknown");
    }
}
