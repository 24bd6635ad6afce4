package io.github.tapwright.desktop.part;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Remedies as a screen gives them. The calculations name the command that mends something, as in "write it down with
 * sitting edit"; on a screen the same is done by a button, so its name takes the command's place.
 */
public final class ScreenWays {

    private static final String SHELF = "on the Shelf";
    private static final String WORKSHOP = "on the Workshop screen";

    private static final List<Way> WAYS = List.of(
            Way.of("sitting edit", "Correct sitting", SHELF),
            Way.of("instrument edit", "Correct instrument", SHELF),
            Way.of("sitting show", "Open sitting", SHELF),
            Way.of("sitting add", "New sitting", SHELF),
            Way.of("sitting set-aside(?: \\d+)* --take-back", "Use again", SHELF),
            Way.of("sitting set-aside", "Set sitting aside", SHELF),
            Way.of("sitting reanalyse", "Analyse anew", SHELF),
            Way.of("calibration withdraw(?: \\d+)* --take-back", "Use this again", WORKSHOP),
            Way.of("calibration withdraw", "Withdraw", WORKSHOP));

    private ScreenWays() {}

    /**
     * One button.
     *
     * @param command what it takes the place of, with the numbers and options it is given
     * @param button its name, and on which screen
     */
    private record Way(Pattern command, String button) {

        static Way of(String command, String button, String screen) {
            return new Way(Pattern.compile("with " + command + "(?: \\d+)*"), "with “" + button + "” " + screen);
        }

        String in(String words) {
            return command.matcher(words).replaceAll(button);
        }
    }

    /**
     * A text with the buttons of the screens for the commands it names.
     *
     * @param words a sentence or a reason
     * @return the same, if it names none of them
     */
    public static String in(String words) {
        String said = words;
        for (Way way : WAYS) {
            said = way.in(said);
        }
        return said;
    }
}
