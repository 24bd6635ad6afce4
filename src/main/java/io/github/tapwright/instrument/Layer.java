package io.github.tapwright.instrument;

import java.util.Optional;

/**
 * One layer of a top.
 *
 * @param material wood or core material; empty if unknown
 * @param thicknessMm 0.1 to 20 mm; empty if unknown
 */
public record Layer(Optional<String> material, Optional<Double> thicknessMm) {

    /** A layer of which nothing is known, or which does not exist. */
    public static final Layer UNKNOWN = new Layer(Optional.empty(), Optional.empty());

    /** Refuses thicknesses no top has. */
    public Layer {
        material = Entry.line("the material of a layer", material);
        thicknessMm = Entry.figure("the thickness of a layer in mm", thicknessMm, 0.1, 20);
    }

    /**
     * Whether anything is known of this layer.
     *
     * @return true if material or thickness is known
     */
    public boolean known() {
        return !equals(UNKNOWN);
    }
}
