package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.settings.DeskSettings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.PlayingOrder;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.Optional;

/** What a visit to the microphone is for, and how it is set up. The set-up advice is common practice, no source. */
public enum Plan {
    /** Resonances of the body as it is. */
    BODY_TAPS(
            "Body taps",
            List.of(
                    "Lay the guitar on soft foam at neck and tail, or hang it by the headstock; nothing touches top or back.",
                    "Damp the strings with a cloth or foam under them.",
                    "Microphone half a metre to a metre in front of the top; write the distance down and keep it.",
                    "Tap with the same small soft hammer or a knuckle at the same place, each tap as the one before.",
                    "Wait until a tap has died away, two seconds, then tap again. Eight good taps are plenty.")),
    /** The soundhole covered: the top without the air. */
    HOLE_COVERED(
            "Hole covered",
            List.of(
                    "Set up as for body taps.",
                    "Cover the soundhole with a light, stiff, close-fitting cover that does not press on the top.",
                    "Tap as before. Open the hole again afterwards.")),
    /** A known mass on the bridge: how heavy the top moves. */
    ADDED_MASS(
            "Added mass",
            List.of(
                    "Set up as for body taps.",
                    "Stick a weighed mass of 5 to 20 g to the bridge with putty; write mass and place down.",
                    "Tap beside it, not on it. Take mass and putty off again without harming the finish.")),
    /** A run over the fingerboard. */
    NOTES(
            "Notes",
            List.of(
                    "Tune the guitar. Hold or support it the same way each time.",
                    "Play one note after the other, string by string from the lowest, each left to ring until it is gone.",
                    "Keep your face away from the strings: a string that breaks can hurt an eye. Wear eye protection.")),
    /** Repeated plucks: how loud. */
    LOUDNESS(
            "Loudness",
            List.of(
                    "Pluck each open string with a thin wire that breaks at the same pull, at the same place.",
                    "Wear eye protection: a snapping wire or string can injure. Follow the safety rules of your place.",
                    "Five plucks on each string at least; let each die away.")),
    /** The same guitar set up anew again and again: how far setting up alone moves the numbers. */
    REPEATABILITY(
            "Repeatability",
            List.of(
                    "Set up as for body taps and keep the sitting.",
                    "Take the guitar down, put it up again as if for the first time, and record again.",
                    "Three set-ups at least, five are better. Then press Keep the study.",
                    "Playing again is studied on the Workshop screen, from sittings for Notes or for Loudness.")),
    /** What the room adds. */
    ROOM_CHECK(
            "Room check",
            List.of(
                    "Leave everything as for a sitting, but do not tap.",
                    "Record ten seconds of the room: no talking, machines as they usually run.",
                    "The hints tell what to mend: noise, hum, gain. Nothing is kept as a sitting."));

    private static final int LEAST_TAPS = 5;

    private final String words;
    /** List.of keeps it from changing, which the type cannot say. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> steps;

    Plan(String words, List<String> steps) {
        this.words = words;
        this.steps = steps;
    }

    /**
     * Its name.
     *
     * @return in words
     */
    public String words() {
        return words;
    }

    /**
     * How to set up.
     *
     * @return one step after the other
     */
    public List<String> steps() {
        return steps;
    }

    /**
     * What the recording is analysed for.
     *
     * @param desk how the guitars are tuned that come to it
     * @return taps, notes or plucks
     */
    public Procedure procedure(DeskSettings desk) {
        return switch (this) {
            case NOTES ->
                new Procedure.NoteRun(new Fingerboard.Settings(
                        desk.tuning(), PlayingOrder.STRING_BY_STRING, NoteSettings.STANDARD.withA4(desk.a4Hz())));
            case LOUDNESS -> new Procedure.OpenPlucks(desk.tuning(), Optional.empty());
            default -> new Procedure.BodyTaps(TapSettings.STANDARD);
        };
    }

    /**
     * The state of the soundhole this plan asks for.
     *
     * @return covered, or open
     */
    public HoleState hole() {
        return this == HOLE_COVERED ? HoleState.COVERED : HoleState.OPEN;
    }

    /**
     * Whether strikes are followed while they fall.
     *
     * @return true for taps
     */
    public boolean isForTaps() {
        return this != NOTES && this != LOUDNESS;
    }

    /**
     * How many good taps to ask for before any figure is trusted.
     *
     * @return 5
     */
    public static int leastTaps() {
        return LEAST_TAPS;
    }
}
