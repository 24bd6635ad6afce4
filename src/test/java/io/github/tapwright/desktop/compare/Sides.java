package io.github.tapwright.desktop.compare;

import io.github.tapwright.sitting.Sitting;
import java.util.Optional;

/** Chooses what is compared, as a maker does: from the choices there are. */
final class Sides {

    private Sides() {}

    /** Two sittings, the first as A. */
    static void choose(CompareModel model, Sitting first, Sitting second) {
        model.first().set(Optional.of(side(model, first)));
        model.second().set(Optional.of(side(model, second)));
    }

    /** The choice of a sitting; fails where it is not offered. */
    static Side side(CompareModel model, Sitting of) {
        return model.choices().stream()
                .filter(s -> s.sitting().equals(Optional.of(of.id())))
                .findFirst()
                .orElseThrow();
    }
}
