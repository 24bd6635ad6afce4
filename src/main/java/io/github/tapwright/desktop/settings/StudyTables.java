package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.StudiedResonance;
import io.github.tapwright.comparison.played.PlayedScatter;
import io.github.tapwright.comparison.played.PlayingStudyWords;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The figures of a study: of taps resonance by resonance, of what was played quantity by quantity. */
final class StudyTables {

    private static final double OF_TAPS_HEIGHT = 182;
    private static final double OF_PLAYING_HEIGHT = 116;
    private static final String OF_TAPS =
            "Standard deviations: s r within one set-up, s L added by setting up again, s R both together.";
    private static final String OF_PLAYING =
            "Standard deviations of the mean over all strings: s r what the notes or plucks of one sitting leave unsure, s L added by"
                    + " playing again, s R both together, and where the true one lies, 19 times of 20; counted: what comparisons take.";

    private final TableView<StudiedResonance> resonances = sized(resonances(), OF_TAPS_HEIGHT);
    private final TableView<PlayedScatter> quantities = sized(quantities(), OF_PLAYING_HEIGHT);
    private final Label legend = Parts.paragraph("");
    private final VBox node = new VBox(4, resonances, quantities, legend);

    StudyTables() {
        legend.getStyleClass().add("quiet");
    }

    Region node() {
        return node;
    }

    void show(Optional<Study> study) {
        List<StudiedResonance> ofTaps = study.filter(Study.OfTaps.class::isInstance)
                .map(s -> ((Study.OfTaps) s).of().resonances())
                .orElse(List.of());
        List<PlayedScatter> ofPlaying = study.filter(Study.OfPlaying.class::isInstance)
                .map(s -> ((Study.OfPlaying) s).of().scatters())
                .orElse(List.of());
        resonances.getItems().setAll(ofTaps);
        quantities.getItems().setAll(ofPlaying);
        legend.setText(ofPlaying.isEmpty() ? OF_TAPS : OF_PLAYING);
        Parts.show(resonances, !ofTaps.isEmpty());
        Parts.show(quantities, !ofPlaying.isEmpty());
        Parts.show(node, !ofTaps.isEmpty() || !ofPlaying.isEmpty());
    }

    private static <R> TableView<R> sized(TableView<R> table, double height) {
        table.setPrefHeight(height);
        table.setMinHeight(height);
        return table;
    }

    private static TableView<StudiedResonance> resonances() {
        return Parts.table(
                "Resonances of the study",
                "",
                Parts.column("Resonance", 112, false, r -> r.name().orElse("no name")),
                Parts.column(
                        "Mean (Hz)", 90, true, r -> Figures.text(r.frequencyHz().mean(), 2)),
                Parts.column(
                        "s r (Hz)", 78, true, r -> Figures.text(r.frequencyHz().withinSetUp(), 3)),
                Parts.column(
                        "s L (Hz)", 82, true, r -> Figures.text(r.frequencyHz().betweenSetUps(), 3)),
                Parts.column("Q", 46, true, r -> Figures.text(r.q().mean(), 1)),
                Parts.column("s R of Q", 82, true, r -> Figures.text(r.q().reproducibility(), 1)),
                Parts.column(
                        "s R (dB)",
                        84,
                        true,
                        r -> r.levelDb()
                                .map(l -> Figures.text(l.reproducibility(), 2))
                                .orElse("–")));
    }

    private static TableView<PlayedScatter> quantities() {
        return Parts.table(
                "Quantities of the study",
                "",
                Parts.column(
                        "Quantity",
                        168,
                        false,
                        s -> s.quantity().words() + " (" + s.quantity().unit() + ")"),
                Parts.column("Mean", 82, true, PlayingStudyWords::mean),
                deviation("s r", 46, s -> s.scatter().withinSetUp()),
                deviation("s L", 46, s -> s.scatter().betweenSetUps()),
                deviation("s R", 46, s -> s.scatter().reproducibility()),
                Parts.column("s R, 95 %", 92, true, PlayingStudyWords::reproducibility95),
                deviation("Counted", 78, s -> s.counted().deviation()));
    }

    private static TableColumn<PlayedScatter, String> deviation(
            String title, double width, ToDoubleFunction<PlayedScatter> onScale) {
        return Parts.column(
                title, width, true, s -> PlayingStudyWords.deviation(s.quantity(), onScale.applyAsDouble(s)));
    }
}
