package io.github.tapwright.desktop;

import io.github.tapwright.desktop.work.Notices;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;

/** The program's window, from its opening to its closing. */
public final class DeskApplication extends Application {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 720;

    private @Nullable Shell shell;

    /** Made by the toolkit. */
    public DeskApplication() {}

    @Override
    public void start(Stage stage) {
        stage.setTitle("Tapwright");
        Path folder = folder();
        DeskLog log = new DeskLog(folder);
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> log.accept(failure));
        try {
            OpenDesk desk = OpenDesk.open(folder, Clock.system(ZoneId.systemDefault()));
            Shell opened = new Shell(desk, new Notices(log), getHostServices()::showDocument);
            shell = opened;
            stage.setScene(opened.scene(WIDTH, HEIGHT));
            stage.show();
            // Later, because a window that has just opened gives the keyboard to the first thing on it.
            Platform.runLater(opened::begin);
        } catch (IOException | RuntimeException e) {
            log.accept(e);
            stage.setScene(new Scene(new Label(cannotOpen(folder, e)), WIDTH / 2, HEIGHT / 2));
            stage.show();
        }
    }

    private static String cannotOpen(Path folder, Exception failure) {
        return "The archive in " + folder + " cannot be opened:\n" + failure.getMessage();
    }

    private Path folder() {
        return Optional.ofNullable(getParameters().getNamed().get("archive"))
                .or(() -> Optional.ofNullable(System.getenv("TAPWRIGHT_ARCHIVE")))
                .map(Path::of)
                .orElseGet(() -> Path.of(System.getProperty("user.home"), "Tapwright"));
    }

    @Override
    public void stop() {
        if (shell != null) {
            shell.close();
        }
    }
}
