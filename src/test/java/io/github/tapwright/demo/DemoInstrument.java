package io.github.tapwright.demo;

import io.github.tapwright.mode.body.Plate;
import io.github.tapwright.mode.body.Soundhole;
import java.util.Optional;

/**
 * One invented guitar before finish, at 45 % relative humidity.
 *
 * @param shopNumber its number on the shelf
 * @param construction how the top is made: "solid", "honeycomb-sandwich" or "wood-sandwich"
 * @param layers the top's layers
 * @param bracing in the maker's words
 * @param volumeCubicMetres of the body
 * @param hole the soundhole
 * @param top as a piston
 * @param back as a piston
 */
record DemoInstrument(
        String shopNumber,
        String construction,
        Layers layers,
        String bracing,
        double volumeCubicMetres,
        Soundhole hole,
        Plate top,
        Plate back) {

    /** The top from outside to inside; a solid top is all outer skin. */
    record Layers(Layer outerSkin, Optional<Layer> core, Optional<Layer> innerSkin) {}

    record Layer(String material, double thicknessMm) {}

    static Layers solid(String material, double thicknessMm) {
        return new Layers(new Layer(material, thicknessMm), Optional.empty(), Optional.empty());
    }

    static Layers sandwich(Layer skin, Layer core) {
        return new Layers(skin, Optional.of(core), Optional.of(skin));
    }
}
