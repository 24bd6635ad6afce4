package io.github.tapwright.desktop;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import io.github.tapwright.chart.Light;
import io.github.tapwright.desktop.part.Parts;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.BackgroundWork;
import io.github.tapwright.desktop.work.Notice;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.RunningJob;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import javafx.application.Application;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The frame around the screens: their names to the left, what happens at the foot. */
final class ShellView {

    private final List<Screen> screens;
    private final SettingsModel settings;
    private final Notices notices;
    private final List<ToggleButton> buttons;
    private final BorderPane node = new BorderPane();
    private final HBox jobStrip = Parts.row();
    private final HBox noticeStrip = Parts.row();
    private int current;

    ShellView(List<Screen> screens, BackgroundWork work, Notices notices, SettingsModel settings) {
        this.screens = screens;
        this.settings = settings;
        this.notices = notices;
        ToggleGroup group = new ToggleGroup();
        this.buttons = IntStream.range(0, screens.size())
                .mapToObj(i -> button(i, group))
                .toList();
        node.setLeft(side());
        noticeStrip.getStyleClass().add("notice-strip");
        jobStrip.getStyleClass().add("job-strip");
        jobStrip.managedProperty().bind(Bindings.isNotEmpty(jobStrip.getChildren()));
        HBox foot = new HBox(noticeStrip, jobStrip);
        HBox.setHgrow(noticeStrip, Priority.ALWAYS);
        foot.getStyleClass().add("foot");
        node.setBottom(foot);
        work.running().addListener((ListChangeListener<RunningJob>) change -> showJob(work));
        notices.latest().addListener((o, before, after) -> showNotice(after));
        settings.light().addListener((o, before, after) -> applyTheme(after));
        applyTheme(settings.light().get());
        showNotice(Optional.empty());
    }

    Parent node() {
        return node;
    }

    int screenCount() {
        return screens.size();
    }

    int current() {
        return current;
    }

    void dress(Scene scene) {
        scene.getStylesheets()
                .add(Objects.requireNonNull(ShellView.class.getResource("desk.css"), "desk.css")
                        .toExternalForm());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, e -> forgetLettersOfOtherScreens(scene, e));
    }

    /**
     * The toolkit asks the first letter that fits, be it small or capital, and keeps those of screens no longer shown, with no
     * button left: Alt+W would do nothing where another screen has it on a small w.
     */
    private static void forgetLettersOfOtherScreens(Scene scene, KeyEvent e) {
        if (e.isAltDown()) {
            scene.getMnemonics().values().removeIf(List::isEmpty);
        }
    }

    /** Builds a screen that is to be told something before it is shown. */
    void prepare(int screen) {
        screens.get(screen).front();
    }

    void show(int screen) {
        current = screen;
        buttons.get(screen).setSelected(true);
        Screen.Front front = screens.get(screen).front();
        node.setCenter(front.node());
        BorderPane.setAlignment(front.node(), Pos.TOP_LEFT);
        front.show();
    }

    /** Reads the screen in front anew; the cursor stays where it is. */
    void refresh() {
        screens.get(current).front().refresh().run();
    }

    private ToggleButton button(int screen, ToggleGroup group) {
        String name = screens.get(screen).name();
        ToggleButton button = new ToggleButton(name);
        button.setToggleGroup(group);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(name);
        button.setAccessibleHelp("Ctrl+" + (screen + 1));
        button.setTooltip(new javafx.scene.control.Tooltip(name + " (Ctrl+" + (screen + 1) + ")"));
        button.getStyleClass().add("screen-button");
        button.setOnAction(e -> show(screen));
        return button;
    }

    private Region side() {
        Button light = Parts.button(
                "Light or dark",
                "Changes between light and dark (Ctrl+D)",
                () -> settings.change(settings.now().get().inOtherLight()));
        Button units = Parts.button(
                "°C or °F",
                "Changes the unit of temperatures",
                () -> settings.change(
                        settings.now().get().in(settings.units() == Units.CELSIUS ? Units.FAHRENHEIT : Units.CELSIUS)));
        List.of(light, units).forEach(b -> {
            b.setMaxWidth(Double.MAX_VALUE);
            b.getStyleClass().add("flat");
        });
        Region spring = new Region();
        VBox.setVgrow(spring, Priority.ALWAYS);
        VBox side = new VBox(4, Parts.heading("Tapwright", "program-name"));
        side.getChildren().addAll(buttons);
        side.getChildren().addAll(spring, light, units);
        side.getStyleClass().add("side");
        return side;
    }

    private void showJob(BackgroundWork work) {
        if (work.running().isEmpty()) {
            jobStrip.getChildren().clear();
            return;
        }
        RunningJob job = work.running().get(0);
        Label words = new Label();
        words.textProperty().bind(job.words());
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText("Progress");
        bar.progressProperty().bind(job.share());
        bar.setPrefWidth(110);
        jobStrip.getChildren().setAll(words, bar, Parts.button("Give up", "Ends what is being done", job::giveUp));
    }

    private void showNotice(Optional<Notice> notice) {
        noticeStrip.getStyleClass().removeAll("done", "trouble");
        noticeStrip.getChildren().clear();
        notice.ifPresent(n -> {
            noticeStrip.getStyleClass().add(n.kind() == Notice.Kind.DONE ? "done" : "trouble");
            Label words = Parts.paragraph(n.words());
            words.setAccessibleText(n.words());
            HBox.setHgrow(words, Priority.ALWAYS);
            noticeStrip.getChildren().add(words);
            if (n.undo().isPresent()) {
                noticeStrip.getChildren().add(Parts.button("Undo", "Takes it back (Ctrl+Z)", notices::undo));
            }
            noticeStrip.getChildren().add(Parts.button("Got it", "Takes the notice away", notices::dismiss));
        });
    }

    private static void applyTheme(Light light) {
        Application.setUserAgentStylesheet(
                light == Light.DAY
                        ? new PrimerLight().getUserAgentStylesheet()
                        : new PrimerDark().getUserAgentStylesheet());
    }
}
