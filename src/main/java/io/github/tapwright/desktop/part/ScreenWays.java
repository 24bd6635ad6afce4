package io.github.tapwright.desktop.part;

import java.util.Map;

/**
 * Remedies as a screen gives them. The calculations name the command that mends something, as in "write it down with
 * sitting edit"; on a screen the same is done by a button, so its name takes the command's place.
 */
public final class ScreenWays {

    private static final Map<String, String> BUTTONS = Map.of(
            "sitting edit", "Correct sitting",
            "instrument edit", "Correct instrument",
            "sitting show", "Open sitting",
            "sitting add", "New sitting");

    private ScreenWays() {}

    /**
     * A text with the buttons of the shelf for the commands it names.
     *
     * @param words a sentence or a reason
     * @return the same, if it names none of them
     */
    public static String in(String words) {
        String said = words;
        for (Map.Entry<String, String> way : BUTTONS.entrySet()) {
            said = said.replace("with " + way.getKey(), "with “" + way.getValue() + "” on the Shelf");
        }
        return said;
    }
}
