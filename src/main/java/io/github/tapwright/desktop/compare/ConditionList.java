package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.ScreenWays;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Whether two sittings may be compared: every condition with its grade, and the maker's reason against a refusal. */
final class ConditionList {

    private static final double WIDEST_GRADE = 240;
    private static final double WIDEST_CONDITION = 150;

    private final CompareModel model;
    private final VBox node = new VBox(3);
    private final TextField reason = new TextField();

    ConditionList(CompareModel model) {
        this.model = model;
        reason.setAccessibleText("Reason to compare in spite of the conditions");
        reason.setPromptText("your reason to compare all the same");
        reason.setOnAction(e -> model.compareDespite(reason.getText()));
        HBox.setHgrow(reason, Priority.ALWAYS);
        node.setAccessibleText("May they be compared?");
        node.setFocusTraversable(false);
    }

    Region node() {
        return node;
    }

    void show() {
        List<Node> lines = new ArrayList<>();
        List<ConditionCheck> checks = model.conditions();
        if (!checks.isEmpty()) {
            model.despite().get().ifPresent(why -> lines.add(despite(why)));
            lines.add(Parts.heading("May they be compared?", "part-title"));
            checks.stream()
                    .filter(c -> c.worst() != Grade.FINE)
                    .map(ConditionList::line)
                    .forEach(lines::add);
            fine(checks, lines);
            if (model.refuses() && model.despite().get().isEmpty()) {
                reason.clear();
                lines.add(Parts.row(
                        reason,
                        Parts.button(
                                "Compare _all the same",
                                "Shows refused figures too; your reason stays beside them",
                                () -> model.compareDespite(reason.getText()))));
            }
        }
        node.getChildren().setAll(lines);
    }

    private Node despite(String why) {
        Label words = Parts.paragraph("⚠ Compared although the conditions forbid it, because: " + why);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox row = Parts.row(words, Parts.button("_Refuse again", "Takes the reason back", model::refuseAgain));
        row.getStyleClass().add("caution");
        return row;
    }

    private static Node line(ConditionCheck check) {
        return line(
                sign(check.worst()) + " " + words(check),
                style(check.worst()),
                check.condition(),
                ScreenWays.in(check.reason()));
    }

    private static void fine(List<ConditionCheck> checks, List<Node> lines) {
        String fine = checks.stream()
                .filter(c -> c.worst() == Grade.FINE)
                .map(ConditionCheck::condition)
                .collect(Collectors.joining(", "));
        if (!fine.isEmpty()) {
            lines.add(line(sign(Grade.FINE) + " " + Grade.FINE.words(), style(Grade.FINE), "alike", fine));
        }
    }

    private static Node line(String grade, String style, String condition, String reason) {
        Label sign = new Label(grade);
        sign.getStyleClass().add(style);
        sign.setMinWidth(WIDEST_GRADE);
        sign.setPrefWidth(WIDEST_GRADE);
        Label what = new Label(condition);
        what.getStyleClass().add("sentence-name");
        what.setMinWidth(WIDEST_CONDITION);
        what.setPrefWidth(WIDEST_CONDITION);
        Label why = Parts.paragraph(reason);
        HBox.setHgrow(why, Priority.ALWAYS);
        HBox line = new HBox(6, sign, what, why);
        line.setAccessibleText(condition + ": " + grade + ", " + reason);
        return line;
    }

    /** The worst grade, and of which quantities where it is not that of all. */
    private static String words(ConditionCheck check) {
        Grade worst = check.worst();
        boolean all = Arrays.stream(Quantity.values()).allMatch(q -> check.grade(q) == worst);
        String whose = Arrays.stream(Quantity.values())
                .filter(q -> check.grade(q) == worst)
                .map(Quantity::words)
                .collect(Collectors.joining(", "));
        return worst == Grade.DOUBTFUL
                ? "doubtful" + (all ? "" : ": " + whose)
                : worst.words() + (all ? "" : ": " + whose);
    }

    private static String sign(Grade grade) {
        return switch (grade) {
            case FINE -> "✓";
            case CORRECTED -> "≈";
            case DOUBTFUL -> "⚠";
            case REFUSED -> "✕";
        };
    }

    private static String style(Grade grade) {
        return switch (grade) {
            case FINE -> "good";
            case CORRECTED -> "corrected";
            case DOUBTFUL -> "doubtful";
            case REFUSED -> "bad";
        };
    }
}
