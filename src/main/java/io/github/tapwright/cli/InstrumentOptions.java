package io.github.tapwright.cli;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Everything one can say about an instrument; what is not said stays as it was. An empty text means unknown. */
final class InstrumentOptions {

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            converter = KeyConverters.Kind.class,
            description = "classical, flamenco, steel-string or other.")
    private Optional<InstrumentKind> kind = Optional.empty();

    @Option(names = "--nickname", paramLabel = "NAME", description = "What the workshop calls it.")
    private Optional<String> nickname = Optional.empty();

    @Option(names = "--scale", paramLabel = "MM", description = "Scale length, mm.")
    private Optional<Double> scaleLengthMm = Optional.empty();

    @Option(names = "--strings", paramLabel = "N", description = "Number of strings.")
    private Optional<Integer> stringCount = Optional.empty();

    @Option(names = "--soundhole", paramLabel = "MM", description = "Diameter of the soundhole, mm.")
    private Optional<Double> soundholeDiameterMm = Optional.empty();

    @Option(
            names = "--construction",
            paramLabel = "TOP",
            converter = KeyConverters.Construction.class,
            description = "solid, honeycomb-sandwich, wood-sandwich or other.")
    private Optional<ConstructionKind> construction = Optional.empty();

    @Option(names = "--outer-skin", paramLabel = "WOOD", description = "The layer one sees, or the whole solid top.")
    private Optional<String> outerSkin = Optional.empty();

    @Option(names = "--outer-skin-mm", paramLabel = "MM", description = "Its thickness, mm.")
    private Optional<Double> outerSkinMm = Optional.empty();

    @Option(names = "--core", paramLabel = "MATERIAL", description = "What lies between the skins.")
    private Optional<String> core = Optional.empty();

    @Option(names = "--core-mm", paramLabel = "MM", description = "Its thickness, mm.")
    private Optional<Double> coreMm = Optional.empty();

    @Option(names = "--inner-skin", paramLabel = "WOOD", description = "The layer the braces are glued to.")
    private Optional<String> innerSkin = Optional.empty();

    @Option(names = "--inner-skin-mm", paramLabel = "MM", description = "Its thickness, mm.")
    private Optional<Double> innerSkinMm = Optional.empty();

    @Option(names = "--bracing", paramLabel = "TEXT", description = "The pattern of braces.")
    private Optional<String> bracing = Optional.empty();

    @Option(names = "--body-notes", paramLabel = "TEXT", description = "Anything else about the body.")
    private Optional<String> bodyNotes = Optional.empty();

    @Option(names = "--notes", paramLabel = "TEXT", description = "Anything else.")
    private Optional<String> notes = Optional.empty();

    /** The instrument with all that was said. */
    Instrument applyTo(Instrument before) {
        return new Instrument(
                before.shopNumber(),
                kind.orElse(before.kind()),
                body(before.body()),
                construction(before.construction()),
                nickname.or(before::nickname),
                notes.or(before::notes));
    }

    private Body body(Body before) {
        return new Body(
                scaleLengthMm.or(before::scaleLengthMm),
                stringCount.or(before::stringCount),
                soundholeDiameterMm.or(before::soundholeDiameterMm),
                bodyNotes.or(before::notes));
    }

    private Construction construction(Construction before) {
        return new Construction(
                construction.or(before::kind),
                layer(before.outerSkin(), outerSkin, outerSkinMm),
                layer(before.core(), core, coreMm),
                layer(before.innerSkin(), innerSkin, innerSkinMm),
                bracing.or(before::bracing));
    }

    private static Layer layer(Layer before, Optional<String> material, Optional<Double> thicknessMm) {
        return new Layer(material.or(before::material), thicknessMm.or(before::thicknessMm));
    }
}
