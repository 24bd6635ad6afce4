package io.github.tapwright.desktop;

import javafx.application.Application;

/** Starts the desktop. It is no Application itself, because Java asks more of a program's entry that is one. */
public final class Launch {

    private Launch() {}

    /**
     * Opens the window.
     *
     * @param args {@code --archive=DIR}, or nothing
     */
    public static void main(String[] args) {
        Application.launch(DeskApplication.class, args);
    }
}
