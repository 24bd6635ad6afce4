package io.github.tapwright.exchange;

import io.github.tapwright.sitting.OutOfUse;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Why something is out of use and since when; null if it is in use. */
final class OutOfUseFields {

    private OutOfUseFields() {}

    static <T> List<Field<T>> of(String name, Function<T, Optional<OutOfUse>> outOfUse) {
        return List.of(
                Field.maybe(name, thing -> outOfUse.apply(thing).map(OutOfUse::reason)),
                Field.maybe(
                        name + "_since",
                        thing -> outOfUse.apply(thing).map(why -> why.since().toString())));
    }
}
