package io.github.tapwright.exchange;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One named property of a thing, a column of its table and a key of its object.
 *
 * @param <T> the thing
 * @param name stable name in snake_case, ending in the unit if there is one
 * @param reader from the thing to its value, empty if unknown
 */
record Field<T>(String name, Function<T, Optional<?>> reader) {

    /** A field that always has a value. */
    static <T> Field<T> of(String name, Function<T, Object> reader) {
        return new Field<>(name, thing -> Optional.of(reader.apply(thing)));
    }

    /** A field whose value may be unknown. */
    static <T> Field<T> maybe(String name, Function<T, Optional<?>> reader) {
        return new Field<>(name, reader);
    }

    /** The fields of a part as fields of the whole. */
    static <W, P> List<Field<W>> within(List<Field<P>> fields, Function<W, P> part) {
        return fields.stream()
                .map(f -> new Field<W>(f.name(), whole -> f.reader().apply(part.apply(whole))))
                .toList();
    }

    /** The value; a number that is not finite counts as unknown, because neither format can hold it. */
    Optional<?> read(T thing) {
        return reader.apply(thing).filter(v -> !(v instanceof Double d) || Double.isFinite(d));
    }
}
