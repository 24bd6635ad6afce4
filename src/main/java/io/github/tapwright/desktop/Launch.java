package io.github.tapwright.desktop;

import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;

/** Starts the desktop. It is no Application itself, because Java asks more of a program's entry that is one. */
public final class Launch {

    /** Kept, because a logger nobody holds forgets its level. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    private Launch() {}

    /**
     * Opens the window.
     *
     * @param args {@code --archive=DIR}, or nothing
     */
    public static void main(String[] args) {
        // The toolkit warns that it lies on the class path; that is where this program wants it.
        TOOLKIT.setLevel(Level.SEVERE);
        Application.launch(DeskApplication.class, args);
    }
}
