package io.github.tapwright.desktop.sitting;

import io.github.tapwright.chart.Mark;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.plot.CurvePane;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.sitting.live.MoreTaps;
import io.github.tapwright.sitting.live.TapsSoFar;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.Strike;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** Shows the visit: what to write down to the left, what happens at the microphone to the right. */
public final class SittingView {

    private static final double LOOKS_PER_SECOND = 15;

    private final SittingModel model;
    private final BorderPane node = new BorderPane();
    private final VBox centre = new VBox(8);
    private final CurvePane curves;
    private final LevelMeterBar meter = new LevelMeterBar();
    private final Label clock = Parts.heading("", "screen-title");
    private final Label enough = Parts.paragraph("");
    private final StringProperty wantedHz = new SimpleStringProperty("0.3");
    private final TableView<Strike> strikes;
    private final Button start;
    private final PreparingPane preparing;
    private final Timeline looking;

    /**
     * A view.
     *
     * @param model the visit
     * @param settings units and light
     */
    public SittingView(SittingModel model, SettingsModel settings) {
        this.model = model;
        this.curves = new CurvePane(settings.light(), settings.a4Hz());
        this.strikes = strikeTable();
        this.start = Parts.button("_Record", "Opens the microphone and records to the disk (R)", model::record);
        this.preparing = new PreparingPane(model, settings, start);
        this.looking = new Timeline(new KeyFrame(Duration.seconds(1 / LOOKS_PER_SECOND), e -> model.look()));
        looking.setCycleCount(Animation.INDEFINITE);
        ScrollPane form = new ScrollPane(preparing.form());
        form.setFitToWidth(true);
        form.setPrefWidth(390);
        form.setAccessibleText("What to write down");
        node.setLeft(form);
        node.setCenter(centre);
        centre.getStyleClass().add("pane");
        model.step().addListener((o, before, after) -> arrange(after));
        model.live().addListener((o, before, after) -> show(after));
        model.plan().addListener((o, before, after) -> arrange(model.step().get()));
        arrange(model.step().get());
    }

    /**
     * The view.
     *
     * @return to be put in a window
     */
    public Node node() {
        return node;
    }

    /** Puts the cursor where one begins. */
    public void focus() {
        start.requestFocus();
    }

    private void arrange(VisitStep step) {
        switch (step) {
            case PREPARING -> {
                looking.stop();
                centre.getChildren().setAll(preparing.guide());
            }
            case RECORDING -> {
                looking.play();
                centre.getChildren()
                        .setAll(running(List.of(
                                Parts.button("_Stop", "Ends the recording; all of it is on the disk", model::stop),
                                Parts.button(
                                        "_Undo last strike",
                                        "Sets the last used strike aside; the sound itself stays",
                                        model::undoStrike))));
            }
            case RECORDED -> {
                looking.stop();
                centre.getChildren().setAll(running(endButtons()));
            }
        }
    }

    private List<Button> endButtons() {
        if (model.plan().get() == Plan.ROOM_CHECK) {
            return List.of(Parts.button("_Done", "Goes back to preparing", model::endVisit));
        }
        return List.of(
                Parts.button("_Keep", "Analyses the recording and keeps it as a sitting", model::keep),
                Parts.button("Set _aside", "Makes no sitting of it; the file stays", model::discard));
    }

    private List<Node> running(List<Button> buttons) {
        HBox row = Parts.row(clock, Parts.spring());
        row.getChildren().addAll(buttons);
        buttons.get(0).getStyleClass().add("accent");
        if (!model.plan().get().isForTaps()) {
            return List.of(row, meter.node(), Parts.paragraph(advice()));
        }
        VBox.setVgrow(curves, Priority.ALWAYS);
        TextField wanted = Parts.field("Wanted uncertainty in hertz", "0.3", wantedHz);
        wanted.setMinWidth(70);
        wanted.setPrefWidth(70);
        Label question = new Label("Enough at ± (Hz)");
        question.setMinWidth(Region.USE_PREF_SIZE);
        strikes.setPrefHeight(190);
        return List.of(
                row,
                meter.node(),
                curves,
                Parts.row(question, wanted, enough),
                strikes,
                Parts.paragraph("Enter on a strike sets it aside, or takes it back."));
    }

    private String advice() {
        return String.join("\n", model.plan().get().steps());
    }

    private TableView<Strike> strikeTable() {
        TableView<Strike> table = Parts.table(
                "Strikes so far",
                "No strike yet. Tap, and wait until it has died away.",
                Parts.column("At (s)", 70, true, s -> Figures.text(s.onsetSeconds(), 2)),
                Parts.column("Peak (dBFS)", 95, true, s -> Figures.text(s.peakDbfs(), 1)),
                Parts.column("Above the noise (dB)", 140, true, s -> Figures.text(s.snrDb(), 0)),
                Parts.column("Verdict", 300, false, SittingView::verdict));
        table.setOnKeyPressed(e -> {
            Strike chosen = table.getSelectionModel().getSelectedItem();
            if (e.getCode() == javafx.scene.input.KeyCode.ENTER && chosen != null) {
                model.toggle(chosen);
            }
        });
        return table;
    }

    private static String verdict(Strike strike) {
        return strike.used() ? "✓ used" : "✗ " + strike.reasons();
    }

    private void show(Optional<LiveView> now) {
        meter.show(now.map(LiveView::level));
        clock.setText(now.map(this::words).orElse(""));
        TapsSoFar taps = now.map(LiveView::taps).orElse(TapsSoFar.NOTHING);
        List<Strike> latestFirst = IntStream.range(0, taps.strikes().size())
                .mapToObj(i -> taps.strikes().get(taps.strikes().size() - 1 - i))
                .toList();
        if (!latestFirst.equals(strikes.getItems())) {
            strikes.setItems(FXCollections.observableArrayList(latestFirst));
        }
        curves.show(taps.curve().map(c -> new Trace("so far", c, marks(taps))).stream()
                .toList());
        enough.setText(enough(taps));
    }

    private String words(LiveView view) {
        String lost = view.losses().isEmpty()
                ? ""
                : ", LOST SOUND: "
                        + view.losses().stream()
                                .map(loss -> loss.text(model.format().get()))
                                .collect(Collectors.joining("; "));
        String counted = model.plan().get().isForTaps() ? ", " + view.taps().usedCount() + " good taps" : "";
        return (view.running() ? "Recording " : "Recorded ") + Figures.text(view.seconds(), 1) + " s" + counted + lost;
    }

    private static List<Mark> marks(TapsSoFar taps) {
        return taps.resonances().stream()
                .map(r -> CurvePicture.mark(r.resonance(), r.name().map(ModeName::words)))
                .toList();
    }

    private String enough(TapsSoFar taps) {
        if (!model.plan().get().isForTaps() || model.plan().get() == Plan.ROOM_CHECK) {
            return String.join(" ", taps.notes());
        }
        int missing = Plan.leastTaps() - taps.usedCount();
        String named = taps.resonances().stream()
                .filter(r -> r.name().isPresent())
                .flatMap(r -> more(r).stream())
                .collect(Collectors.joining("; "));
        String notes = String.join(" ", taps.notes());
        String base = missing > 0
                ? missing + (missing == 1 ? " more good tap" : " more good taps") + " before figures can be trusted"
                : named;
        return (base + " " + notes).strip();
    }

    private Optional<String> more(NamedResonance resonance) {
        try {
            return Units.figure("wanted uncertainty", wantedHz.get())
                    .filter(hz -> hz > 0)
                    .flatMap(hz -> resonance
                            .name()
                            .map(n -> MoreTaps.until(resonance.resonance(), hz).text(n.words())));
        } catch (RefusedEntryException e) {
            return Optional.of(String.valueOf(e.getMessage()));
        }
    }
}
