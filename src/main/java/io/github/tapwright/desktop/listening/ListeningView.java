package io.github.tapwright.desktop.listening;

import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.sound.PlaybackBar;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.sitting.listening.ListeningSession;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Shows the choice of sounds, then one question after the other, then the verdict. */
public final class ListeningView {

    private static final double READABLE_WIDTH = 760;

    private final ListeningModel model;
    private final BorderPane node = new BorderPane();
    private final ChoosingPane choosing;
    private final VBox asking;
    private final Label question = Parts.heading("", "part-title");
    private final Label heard = Parts.paragraph("");
    private final ProgressBar progress = new ProgressBar();
    private final Button playA;
    private final Button isA;
    private final Button isB;
    private final VBox verdict = new VBox(10);

    /**
     * A view.
     *
     * @param model the listening
     * @param playback what is heard
     */
    public ListeningView(ListeningModel model, PlaybackModel playback) {
        this.model = model;
        this.choosing = new ChoosingPane(model);
        this.playA = letter("Play _A", Letter.A);
        this.isA = answer("X is A  (_1)", true);
        this.isB = answer("X is B  (_2)", false);
        this.asking = asking(playback);
        node.getStyleClass().add("pane");
        node.addEventFilter(KeyEvent.KEY_PRESSED, this::press);
        model.session().addListener((o, before, after) -> arrange(after));
        model.heard().addListener((o, before, after) -> showHeard(after));
        arrange(model.session().get());
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
        if (model.session().get().isPresent()) {
            playA.requestFocus();
        } else {
            choosing.focus();
        }
    }

    private Button letter(String words, Letter letter) {
        Button button = Parts.button(words, "Plays " + letter + " (key " + letter + ")", () -> model.play(letter));
        button.getStyleClass().add("large");
        button.setMinWidth(120);
        return button;
    }

    private Button answer(String words, boolean saidA) {
        String key = saidA ? "1" : "2";
        Button button = Parts.button(
                words, "Answers that X is " + (saidA ? "A" : "B") + " (key " + key + ")", () -> model.answer(saidA));
        button.getStyleClass().addAll("large", "accent");
        button.setMinWidth(160);
        return button;
    }

    private VBox asking(PlaybackModel playback) {
        progress.setAccessibleText("Questions answered");
        progress.setPrefWidth(READABLE_WIDTH);
        VBox box = new VBox(
                14,
                Parts.heading("Blind listening", "screen-title"),
                question,
                progress,
                Parts.paragraph(
                        "A and B are two of your sounds, X is one of them again. Play each as often as you like,"
                                + " then say which of them X is. If you hear no difference, guess: guessing is part of the"
                                + " test. You are told how you did after the last question, not before."),
                new HBox(10, playA, letter("Play _B", Letter.B), letter("Play _X", Letter.X)),
                heard,
                new HBox(10, isA, isB),
                new PlaybackBar(playback).node(),
                Parts.row(Parts.button(
                        "_Leave for now",
                        "Goes back to the choice; the answers so far are kept and you can go on later",
                        model::leave)));
        box.setMaxWidth(READABLE_WIDTH);
        return box;
    }

    private void arrange(Optional<ListeningSession> session) {
        if (session.isEmpty()) {
            node.setCenter(choosing.node());
        } else if (session.get().finished()) {
            node.setCenter(scrolled(verdict(session.get())));
        } else {
            ListeningSession s = session.get();
            question.setText(model.standing());
            progress.setProgress(s.answers().size() / (double) s.setUp().trialCount());
            node.setCenter(scrolled(asking));
            showHeard(model.heard().get());
            if (node.getScene() != null) {
                playA.requestFocus();
            }
        }
    }

    private static ScrollPane scrolled(VBox content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setFocusTraversable(false);
        return pane;
    }

    private void showHeard(Set<Letter> letters) {
        boolean all = letters.size() == Letter.values().length;
        isA.setDisable(!all);
        isB.setDisable(!all);
        heard.setText(
                all
                        ? "All three heard. Answer, or listen again."
                        : letters.isEmpty()
                                ? "Nothing heard yet in this question."
                                : "Heard: " + letters.toString().replaceAll("[\\[\\]]", "")
                                        + ". Listen to all three before you answer.");
    }

    private VBox verdict(ListeningSession session) {
        verdict.getChildren().setAll(Parts.heading("Blind listening " + session.id(), "screen-title"));
        Label brief = Parts.heading(model.standing(), "part-title");
        verdict.getChildren().add(brief);
        model.result().forEach(words -> verdict.getChildren().add(Parts.paragraph(words)));
        verdict.getChildren().add(Parts.heading("What this does not say", "part-title"));
        model.limits().forEach(words -> verdict.getChildren().add(Parts.paragraph("• " + words)));
        verdict.getChildren().add(Parts.heading("The sounds", "part-title"));
        for (int i = 0; i < model.matching().size(); i++) {
            verdict.getChildren()
                    .add(Parts.paragraph((i + 1) + ". " + model.matching().get(i)));
        }
        Button back = Parts.button("_Back to the choice", "Chooses sounds for another listening", model::leave);
        verdict.getChildren().add(back);
        verdict.setMaxWidth(READABLE_WIDTH);
        return verdict;
    }

    private void press(KeyEvent event) {
        boolean plain = !event.isShortcutDown() && !event.isAltDown();
        boolean asked = model.session().get().filter(s -> !s.finished()).isPresent();
        if (!plain || !asked) {
            return;
        }
        Optional<Runnable> action = switch (event.getCode()) {
            case A -> Optional.of(() -> model.play(Letter.A));
            case B -> Optional.of(() -> model.play(Letter.B));
            case X -> Optional.of(() -> model.play(Letter.X));
            case DIGIT1, NUMPAD1 -> Optional.of(() -> model.answer(true));
            case DIGIT2, NUMPAD2 -> Optional.of(() -> model.answer(false));
            default -> Optional.empty();
        };
        action.ifPresent(a -> {
            a.run();
            event.consume();
        });
    }

    /** Whether a key does what a click would: activates a row. */
    static boolean activates(KeyEvent event) {
        return event.getCode() == KeyCode.ENTER;
    }
}
