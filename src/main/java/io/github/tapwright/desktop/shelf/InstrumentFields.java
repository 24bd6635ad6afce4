package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.InstrumentKind;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The controls of the form, where an instrument is added and where it is corrected.
 *
 * @param form what is typed
 */
record InstrumentFields(InstrumentForm form) {

    private static final int NOTE_LINES = 3;

    ComboBox<InstrumentKind> kind() {
        return wide(Parts.choice("Kind", List.of(InstrumentKind.values()), InstrumentKind::words, form.kind()));
    }

    ComboBox<Optional<ConstructionKind>> construction() {
        List<Optional<ConstructionKind>> choices = Stream.concat(
                        Stream.of(Optional.<ConstructionKind>empty()),
                        Stream.of(ConstructionKind.values()).map(Optional::of))
                .toList();
        return wide(Parts.choice(
                "Construction of the soundboard",
                choices,
                c -> c.map(ConstructionKind::words).orElse("not said"),
                form.construction()));
    }

    private static <T> ComboBox<T> wide(ComboBox<T> box) {
        box.setMaxWidth(Double.MAX_VALUE);
        return box;
    }

    TextField field(InstrumentLine line) {
        return Parts.field(line.asked(), line.prompt(), form.line(line));
    }

    /** Everything there is to correct: the guitar to the left, its soundboard to the right. */
    Region correcting(ComboBox<?> kind) {
        GridPane guitar = Parts.halves(8);
        guitar.addRow(0, Parts.named("Kind", kind), asked(InstrumentLine.NICKNAME));
        guitar.addRow(1, asked(InstrumentLine.SCALE), asked(InstrumentLine.STRING_COUNT));
        guitar.addRow(2, asked(InstrumentLine.SOUNDHOLE));
        GridPane layers = Parts.halves(8);
        layers.addRow(0, Parts.named("Construction", construction()), asked(InstrumentLine.BRACING));
        layers.addRow(1, asked(InstrumentLine.OUTER_SKIN), asked(InstrumentLine.OUTER_SKIN_MM));
        layers.addRow(2, asked(InstrumentLine.CORE), asked(InstrumentLine.CORE_MM));
        layers.addRow(3, asked(InstrumentLine.INNER_SKIN), asked(InstrumentLine.INNER_SKIN_MM));
        GridPane both = Parts.halves(24);
        both.addRow(
                0,
                new VBox(
                        8,
                        Parts.heading("The guitar", "part-title"),
                        guitar,
                        notes(InstrumentLine.BODY_NOTES),
                        notes(InstrumentLine.NOTES)),
                new VBox(8, Parts.heading("The soundboard", "part-title"), layers));
        return both;
    }

    private VBox asked(InstrumentLine line) {
        return Parts.named(line.asked(), field(line));
    }

    private VBox notes(InstrumentLine line) {
        return Parts.named(line.asked(), Parts.notes(line.asked(), NOTE_LINES, form.line(line)));
    }
}
