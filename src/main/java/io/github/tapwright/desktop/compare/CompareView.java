package io.github.tapwright.desktop.compare;

import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.report.ReportSubject;
import javafx.application.Platform;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;

/** Shows two sittings against each other, and beside them groups of instruments. */
public final class CompareView {

    /** Where the comparison leads. */
    public interface Ways {

        /**
         * Makes a report.
         *
         * @param subject about what
         */
        void report(ReportSubject subject);
    }

    private final TwoSittingsPane two;
    private final GroupsPane groups;
    private final TabPane node;

    /**
     * A view.
     *
     * @param model two sittings
     * @param groupsModel groups of instruments
     * @param settings light and tuning note
     * @param ways where it leads
     */
    public CompareView(CompareModel model, GroupsModel groupsModel, SettingsModel settings, Ways ways) {
        this.two = new TwoSittingsPane(model, settings, ways);
        this.groups = new GroupsPane(groupsModel, settings, ways);
        Tab first = new Tab("Two sittings", two.node());
        Tab second = new Tab("By construction", groups.node());
        // A study of the whole archive is made only for who looks at it.
        second.setOnSelectionChanged(e -> {
            if (second.isSelected()) {
                groupsModel.refresh();
            }
        });
        this.node = new TabPane(first, second);
        node.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        node.setAccessibleText("Two sittings, or groups of instruments");
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
        Node begin = node.getSelectionModel().getSelectedIndex() == 0 ? two.begin() : groups.begin();
        if (begin.getScene() == null) {
            // Tabs take up their content only when they are first laid out.
            begin.sceneProperty().addListener(new InvalidationListener() {
                @Override
                public void invalidated(Observable scene) {
                    scene.removeListener(this);
                    Platform.runLater(begin::requestFocus);
                }
            });
        } else {
            begin.requestFocus();
        }
    }
}
