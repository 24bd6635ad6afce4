package io.github.tapwright.cli;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Everything one can say about an instrument; what is not said stays as it was, and "unknown" takes it back. */
final class InstrumentOptions {

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            converter = KeyConverters.Kind.class,
            description = "classical, flamenco, steel-string or other.")
    private Optional<InstrumentKind> kind = Optional.empty();

    @Option(
            names = "--nickname",
            paramLabel = "NAME",
            converter = SaidConverters.Text.class,
            description = "What the workshop calls it.")
    private Said<String> nickname = Said.nothing();

    @Option(
            names = "--scale",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "Scale length, mm.")
    private Said<Double> scaleLengthMm = Said.nothing();

    @Option(
            names = "--strings",
            paramLabel = "N",
            converter = SaidConverters.Count.class,
            description = "Number of strings.")
    private Said<Integer> stringCount = Said.nothing();

    @Option(
            names = "--soundhole",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "Diameter of the soundhole, mm.")
    private Said<Double> soundholeDiameterMm = Said.nothing();

    @Option(
            names = "--construction",
            paramLabel = "TOP",
            converter = KeyConverters.Construction.class,
            description = "solid, honeycomb-sandwich, wood-sandwich or other.")
    private Said<ConstructionKind> construction = Said.nothing();

    @Option(
            names = "--outer-skin",
            paramLabel = "WOOD",
            converter = SaidConverters.Text.class,
            description = "The layer one sees, or the whole solid top.")
    private Said<String> outerSkin = Said.nothing();

    @Option(
            names = "--outer-skin-mm",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "Its thickness, mm.")
    private Said<Double> outerSkinMm = Said.nothing();

    @Option(
            names = "--core",
            paramLabel = "MATERIAL",
            converter = SaidConverters.Text.class,
            description = "What lies between the skins.")
    private Said<String> core = Said.nothing();

    @Option(
            names = "--core-mm",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "Its thickness, mm.")
    private Said<Double> coreMm = Said.nothing();

    @Option(
            names = "--inner-skin",
            paramLabel = "WOOD",
            converter = SaidConverters.Text.class,
            description = "The layer the braces are glued to.")
    private Said<String> innerSkin = Said.nothing();

    @Option(
            names = "--inner-skin-mm",
            paramLabel = "MM",
            converter = SaidConverters.Figure.class,
            description = "Its thickness, mm.")
    private Said<Double> innerSkinMm = Said.nothing();

    @Option(
            names = "--bracing",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "The pattern of braces.")
    private Said<String> bracing = Said.nothing();

    @Option(
            names = "--body-notes",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Anything else about the body.")
    private Said<String> bodyNotes = Said.nothing();

    @Option(
            names = "--notes",
            paramLabel = "TEXT",
            converter = SaidConverters.Text.class,
            description = "Anything else.")
    private Said<String> notes = Said.nothing();

    /** The instrument with all that was said. */
    Instrument applyTo(Instrument before) {
        return new Instrument(
                before.shopNumber(),
                kind.orElse(before.kind()),
                body(before.body()),
                construction(before.construction()),
                nickname.over(before.nickname()),
                notes.over(before.notes()));
    }

    private Body body(Body before) {
        return new Body(
                scaleLengthMm.over(before.scaleLengthMm()),
                stringCount.over(before.stringCount()),
                soundholeDiameterMm.over(before.soundholeDiameterMm()),
                bodyNotes.over(before.notes()));
    }

    private Construction construction(Construction before) {
        return new Construction(
                construction.over(before.kind()),
                layer(before.outerSkin(), outerSkin, outerSkinMm),
                layer(before.core(), core, coreMm),
                layer(before.innerSkin(), innerSkin, innerSkinMm),
                bracing.over(before.bracing()));
    }

    private static Layer layer(Layer before, Said<String> material, Said<Double> thicknessMm) {
        return new Layer(material.over(before.material()), thicknessMm.over(before.thicknessMm()));
    }
}
