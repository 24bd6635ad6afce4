package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.sitting.Procedure;

/** What is done again and again for a study; each kind has its own, and comparisons of it rest on that. */
enum StudyKind {
    /** The body tapped. */
    TAPS(
            "Taps",
            Procedure.BodyTaps.KEY,
            "set-ups",
            "One guitar, one day, taken down and put up again for each.",
            "Choose Repeatability on the Sitting screen and set one guitar up " + BenchStudy.ENOUGH
                    + " times, or tick sittings below that were made so."),
    /** Runs of notes. */
    NOTES(
            "Notes",
            Procedure.NoteRun.KEY,
            "sittings",
            "One guitar, set up and played anew for each: the same frets.",
            "Play one guitar anew for " + BenchStudy.ENOUGH + " sittings of notes and tick them below."),
    /** Open strings plucked. */
    PLUCKS(
            "Plucks",
            Procedure.OpenPlucks.KEY,
            "sittings",
            "One guitar, set up anew for each: every open string several times.",
            "Pluck the open strings of one guitar anew for " + BenchStudy.ENOUGH
                    + " sittings of plucks and tick them below.");

    private final String words;
    private final String procedure;
    private final String called;
    private final String task;
    private final String remedy;

    StudyKind(String words, String procedure, String called, String task, String remedy) {
        this.words = words;
        this.procedure = procedure;
        this.called = called;
        this.task = task;
        this.remedy = remedy;
    }

    /** Its name on a button. */
    String words() {
        return words;
    }

    /** What its sittings are made for, a {@link Procedure#key()}. */
    String procedure() {
        return procedure;
    }

    /** What its sittings are called in a study. */
    String called() {
        return called;
    }

    /** How its sittings are made. */
    String task() {
        return task;
    }

    /** What to do where none is kept. */
    String remedy() {
        return remedy;
    }
}
