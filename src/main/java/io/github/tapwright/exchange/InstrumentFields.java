package io.github.tapwright.exchange;

import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Layer;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The table of instruments. */
final class InstrumentFields {

    static final List<Field<Instrument>> ALL = Stream.of(
                    List.<Field<Instrument>>of(
                            Field.of("shop_number", i -> i.shopNumber().text()),
                            Field.of("kind", i -> i.kind().key()),
                            Field.maybe("nickname", Instrument::nickname),
                            Field.maybe("scale_length_mm", i -> i.body().scaleLengthMm()),
                            Field.maybe("string_count", i -> i.body().stringCount()),
                            Field.maybe("soundhole_diameter_mm", i -> i.body().soundholeDiameterMm()),
                            Field.maybe("body_notes", i -> i.body().notes()),
                            Field.maybe(
                                    "construction", i -> i.construction().kind().map(ConstructionKind::key)),
                            Field.maybe("bracing", i -> i.construction().bracing())),
                    layer("outer_skin", Construction::outerSkin),
                    layer("core", Construction::core),
                    layer("inner_skin", Construction::innerSkin),
                    List.<Field<Instrument>>of(Field.maybe("notes", Instrument::notes)))
            .flatMap(List::stream)
            .toList();

    private InstrumentFields() {}

    private static List<Field<Instrument>> layer(String name, Function<Construction, Layer> layer) {
        return List.of(
                Field.maybe(name, i -> layer.apply(i.construction()).material()),
                Field.maybe(
                        name + "_thickness_mm",
                        i -> layer.apply(i.construction()).thicknessMm()));
    }
}
