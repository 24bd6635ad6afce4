package io.github.tapwright.desktop.part;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Sentences below each other that scroll where they are many: headings, what was found, what to mind. */
public final class Sentences {

    /**
     * One of them.
     *
     * @param kind how it is meant
     * @param words the text
     */
    public record Sentence(Kind kind, String words) {

        /**
         * A heading.
         *
         * @param words the text
         * @return the line
         */
        public static Sentence heading(String words) {
            return new Sentence(Kind.HEADING, words);
        }

        /**
         * Something that was found.
         *
         * @param words the text
         * @return the line
         */
        public static Sentence certain(String words) {
            return new Sentence(Kind.CERTAIN, words);
        }

        /**
         * Something that cannot be told.
         *
         * @param words the text
         * @return the line
         */
        public static Sentence open(String words) {
            return new Sentence(Kind.OPEN, words);
        }

        /**
         * Something to mind.
         *
         * @param words the text
         * @return the line
         */
        public static Sentence warning(String words) {
            return new Sentence(Kind.WARNING, words);
        }

        /**
         * Something by the way.
         *
         * @param words the text
         * @return the line
         */
        public static Sentence remark(String words) {
            return new Sentence(Kind.REMARK, words);
        }
    }

    /** How a sentence is meant; each has a sign of its own. */
    public enum Kind {
        /** A heading. */
        HEADING("", "part-title"),
        /** Found. */
        CERTAIN("●", "certain"),
        /** Cannot be told. */
        OPEN("?", "open"),
        /** To mind. */
        WARNING("⚠", "warning"),
        /** By the way. */
        REMARK("", "quiet");

        private final String sign;
        private final String style;

        Kind(String sign, String style) {
            this.sign = sign;
            this.style = style;
        }
    }

    private final VBox lines = new VBox(5);
    private final ScrollPane node = new ScrollPane(lines);

    /**
     * No sentence yet.
     *
     * @param name for screen readers
     */
    public Sentences(String name) {
        lines.getStyleClass().add("sentences");
        node.setFitToWidth(true);
        node.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        node.setAccessibleText(name);
        node.setFocusTraversable(true);
    }

    /**
     * The view.
     *
     * @return to be put on a screen
     */
    public ScrollPane node() {
        return node;
    }

    /**
     * Shows other sentences, from the first.
     *
     * @param sentences from the top
     */
    public void show(List<Sentence> sentences) {
        lines.getChildren().setAll(sentences.stream().map(Sentences::line).toList());
        node.setVvalue(0);
    }

    private static Node line(Sentence sentence) {
        Label words = Parts.paragraph(ScreenWays.in(sentence.words()));
        words.setMaxWidth(Double.MAX_VALUE);
        words.getStyleClass()
                .add(
                        sentence.kind() == Kind.REMARK || sentence.kind() == Kind.HEADING
                                ? sentence.kind().style
                                : "sentence");
        if (sentence.kind().sign.isEmpty()) {
            return words;
        }
        Label sign = new Label(sentence.kind().sign);
        sign.getStyleClass().addAll("sign", sentence.kind().style);
        sign.setMinWidth(18);
        HBox line = new HBox(4, sign, words);
        line.setAlignment(Pos.TOP_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        return line;
    }
}
