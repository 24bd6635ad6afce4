package io.github.tapwright.sitting;

import io.github.tapwright.mode.TapResult;
import io.github.tapwright.statistics.Figures;
import java.util.Optional;

/** What a sitting's recordings gave, by the procedure they were made for. */
public sealed interface Findings {

    /**
     * How the recordings were read.
     *
     * @return procedure and settings
     */
    Procedure procedure();

    /**
     * Which method made these numbers.
     *
     * @return its name and version
     */
    String methodVersion();

    /**
     * Whether there is anything to go on with.
     *
     * @return false if nothing usable was found
     */
    boolean areUsable();

    /**
     * How much was found, in a word.
     *
     * @return such as "5 resonances"
     */
    String inShort();

    /**
     * The body's resonances.
     *
     * @return empty if something else was measured
     */
    default Optional<TapResult> taps() {
        return this instanceof OfTaps found ? Optional.of(found.result()) : Optional.empty();
    }

    /**
     * The notes of a run.
     *
     * @return empty if something else was measured
     */
    default Optional<Fingerboard> notes() {
        return this instanceof OfNotes found ? Optional.of(found.board()) : Optional.empty();
    }

    /**
     * The plucks of the open strings.
     *
     * @return empty if something else was measured
     */
    default Optional<PluckRun> plucks() {
        return this instanceof OfPlucks found ? Optional.of(found.run()) : Optional.empty();
    }

    /**
     * Of taps on the body.
     *
     * @param result resonances, strikes and response curve
     */
    record OfTaps(TapResult result) implements Findings {

        @Override
        public Procedure procedure() {
            return new Procedure.BodyTaps(result.settings());
        }

        @Override
        public String methodVersion() {
            return result.methodVersion();
        }

        @Override
        public boolean areUsable() {
            return !result.resonances().isEmpty();
        }

        @Override
        public String inShort() {
            return Figures.count(result.resonances().size(), "resonance");
        }
    }

    /**
     * Of a run of notes.
     *
     * @param board the notes with their places
     */
    record OfNotes(Fingerboard board) implements Findings {

        @Override
        public Procedure procedure() {
            return new Procedure.NoteRun(board.settings());
        }

        @Override
        public String methodVersion() {
            return board.methodVersion();
        }

        @Override
        public boolean areUsable() {
            return board.notes().stream().anyMatch(n -> n.place().isPresent());
        }

        @Override
        public String inShort() {
            return Figures.count(board.notes().size(), "note");
        }
    }

    /**
     * Of plucks of the open strings.
     *
     * @param run the plucks in the order played
     */
    record OfPlucks(PluckRun run) implements Findings {

        @Override
        public Procedure procedure() {
            return new Procedure.OpenPlucks(run.tuning(), run.calibration());
        }

        @Override
        public String methodVersion() {
            return run.methodVersion();
        }

        @Override
        public boolean areUsable() {
            return run.plucks().stream().anyMatch(p -> p.string().isPresent());
        }

        @Override
        public String inShort() {
            return Figures.count(run.plucks().size(), "pluck") + " in " + run.levelUnit();
        }
    }
}
