package io.github.tapwright.level;

/**
 * Why a recording cannot calibrate anything.
 *
 * @param reason what is wrong
 * @param found what was measured, one line
 */
public record CalibrationRefusal(Reason reason, String found) implements CalibrationResult {

    /** What can be wrong with a calibrator tone, and what to do about it. */
    public enum Reason {
        /** Hardly any sound. */
        TOO_QUIET("seat the calibrator on the microphone, switch it on and check the input"),
        /** The tone reaches full scale. */
        CLIPPED("turn the gain down and record the tone and everything that follows again"),
        /** No 3 s of even level. */
        UNSTEADY("record ten seconds without touching the calibrator, with a fresh battery"),
        /** Neither 1 kHz nor 250 Hz. */
        WRONG_FREQUENCY("record a calibrator of 1 kHz or 250 Hz; a played note cannot calibrate"),
        /** More distortion and noise than a calibrator makes. */
        IMPURE("record in a quiet room, with the calibrator fully seated and no processing of the input");

        private final String remedy;

        Reason(String remedy) {
            this.remedy = remedy;
        }

        /**
         * What the maker can do.
         *
         * @return one line
         */
        public String remedy() {
            return remedy;
        }
    }
}
