package io.github.tapwright.sitting;

import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.Optional;

/** What a visit to the microphone was made for, with the settings its recordings are read by. */
public sealed interface Procedure {

    /** Keys of what is played: notes, plucks. The others are of the body. */
    List<String> PLAYED = List.of(NoteRun.KEY, OpenPlucks.KEY);

    /**
     * The word a maker types and the archive keeps.
     *
     * @return lower case
     */
    String key();

    /**
     * Taps on the body: its resonances.
     *
     * @param settings what to look for
     */
    record BodyTaps(TapSettings settings) implements Procedure {

        /** Its {@link #key()}. */
        public static final String KEY = "taps";

        @Override
        public String key() {
            return KEY;
        }
    }

    /**
     * A run of notes over the fingerboard: pitch, decay and level of each.
     *
     * @param settings how to read the run
     */
    record NoteRun(Fingerboard.Settings settings) implements Procedure {

        /** Its {@link #key()}. */
        public static final String KEY = "notes";

        @Override
        public String key() {
            return KEY;
        }
    }

    /**
     * Repeated plucks of the open strings: how loud they are.
     *
     * @param tuning what the open strings sound
     * @param calibration what the samples mean; empty for levels re full scale
     */
    record OpenPlucks(Tuning tuning, Optional<CalibrationId> calibration) implements Procedure {

        /** Its {@link #key()}. */
        public static final String KEY = "plucks";

        @Override
        public String key() {
            return KEY;
        }
    }
}
