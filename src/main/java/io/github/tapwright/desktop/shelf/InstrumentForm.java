package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** An instrument as the maker types it; what is left empty is unknown. */
final class InstrumentForm {

    private final ObjectProperty<InstrumentKind> kind = new SimpleObjectProperty<>(InstrumentKind.CLASSICAL);
    private final ObjectProperty<Optional<ConstructionKind>> construction =
            new SimpleObjectProperty<>(Optional.empty());
    private final Map<InstrumentLine, StringProperty> lines = new EnumMap<>(InstrumentLine.class);

    InstrumentForm() {
        Stream.of(InstrumentLine.values()).forEach(line -> lines.put(line, new SimpleStringProperty("")));
    }

    /** What sort of guitar it is. */
    ObjectProperty<InstrumentKind> kind() {
        return kind;
    }

    /** How its soundboard is built; empty for unknown. */
    ObjectProperty<Optional<ConstructionKind>> construction() {
        return construction;
    }

    /** A line one types on. */
    StringProperty line(InstrumentLine which) {
        return Objects.requireNonNull(lines.get(which));
    }

    /** All that can be typed or chosen. */
    Stream<Observable> all() {
        return Stream.concat(Stream.of(kind, construction), lines.values().stream());
    }

    /** Shows all that is known; what is unknown stands empty. */
    void fill(Instrument kept) {
        kind.set(kept.kind());
        construction.set(kept.construction().kind());
        lines.forEach((line, typed) -> typed.set(line.text(kept).orElse("")));
    }

    /**
     * What was typed.
     *
     * @param number of which instrument
     * @return all of it
     * @throws RefusedEntryException if something typed makes no sense
     */
    Instrument read(ShopNumber number) {
        return new Instrument(
                number,
                kind.get(),
                new Body(
                        figure(InstrumentLine.SCALE),
                        whole(InstrumentLine.STRING_COUNT),
                        figure(InstrumentLine.SOUNDHOLE),
                        text(InstrumentLine.BODY_NOTES)),
                new Construction(
                        construction.get(),
                        layer(InstrumentLine.OUTER_SKIN, InstrumentLine.OUTER_SKIN_MM),
                        layer(InstrumentLine.CORE, InstrumentLine.CORE_MM),
                        layer(InstrumentLine.INNER_SKIN, InstrumentLine.INNER_SKIN_MM),
                        text(InstrumentLine.BRACING)),
                text(InstrumentLine.NICKNAME),
                text(InstrumentLine.NOTES));
    }

    private Layer layer(InstrumentLine material, InstrumentLine thickness) {
        return new Layer(text(material), figure(thickness));
    }

    private Optional<Integer> whole(InstrumentLine line) {
        return figure(line).map(figure -> {
            if (figure != Math.rint(figure)) {
                throw new RefusedEntryException(line.asked() + ": \""
                        + line(line).get() + "\" is not a whole number; type one such as 6, or leave it empty");
            }
            return figure.intValue();
        });
    }

    private Optional<Double> figure(InstrumentLine line) {
        return Units.figure(line.asked(), line(line).get());
    }

    /** The instrument itself takes a blank text for none. */
    private Optional<String> text(InstrumentLine line) {
        return Optional.of(line(line).get());
    }

    /** Everything known of an instrument, in words. */
    static List<Written> written(Instrument of) {
        return Stream.concat(
                        Stream.of(
                                new Written("kind", Optional.of(of.kind().words())),
                                new Written(
                                        "soundboard", of.construction().kind().map(ConstructionKind::words))),
                        Stream.of(InstrumentLine.values()).map(line -> line.written(of)))
                .toList();
    }
}
