package io.github.tapwright.comparison;

import io.github.tapwright.sitting.Sitting;

/** Two sittings that were compared, whatever was measured in them. */
public interface TwoSittings {

    /**
     * The sitting differences are counted from.
     *
     * @return A
     */
    Sitting first();

    /**
     * The sitting set against it.
     *
     * @return B
     */
    Sitting second();

    /**
     * Whether they may be compared.
     *
     * @return the check list
     */
    Comparability comparability();
}
