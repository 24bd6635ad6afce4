package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Figures;
import java.util.List;

/**
 * A stretch of a kept recording, to be heard.
 *
 * @param sitting which sitting
 * @param recording which of its recordings, from 0
 * @param fromSeconds where it begins
 * @param toSeconds where it ends
 * @param isNote whether it is one note of a run, or else a recording from its beginning
 * @param words what the maker calls it
 */
public record Stretch(
        SittingId sitting, int recording, double fromSeconds, double toSeconds, boolean isNote, String words) {

    private static final double BEFORE_SECONDS = 0.02;
    private static final double GUARD_SECONDS = 0.012;
    private static final double LONGEST_SECONDS = 15;

    /** Refuses a stretch that is none. */
    public Stretch {
        if (recording < 0 || !(fromSeconds >= 0) || !(toSeconds > fromSeconds)) {
            throw new IllegalArgumentException(
                    "no stretch of sound: recording " + recording + ", " + fromSeconds + " to " + toSeconds + " s");
        }
    }

    /**
     * A note of a run: from a moment before its attack to a moment before the next, 15 s at most.
     *
     * @param sitting a sitting for notes
     * @param note which note of its latest analysis, from 0
     * @return the stretch
     * @throws RefusedEntryException if the sitting is not for notes
     */
    public static Stretch ofNote(Sitting sitting, int note) {
        List<Fingerboard.Note> notes = sitting.latest()
                .findings()
                .notes()
                .map(Fingerboard::notes)
                .orElseThrow(() -> new RefusedEntryException("sitting " + sitting.id()
                        + " is not for notes; choose a sitting made with the procedure notes"));
        Fingerboard.Note here = notes.get(note);
        double from = Math.max(0, here.attackSeconds() - BEFORE_SECONDS);
        double end = notes.stream()
                .filter(n -> n.file() == here.file() && n.attackSeconds() > here.attackSeconds())
                .mapToDouble(n -> n.attackSeconds() - BEFORE_SECONDS - GUARD_SECONDS)
                .min()
                .orElse(sitting.recordings().get(here.file()).facts().durationSeconds());
        double to = Math.max(from + GUARD_SECONDS, Math.min(end, from + LONGEST_SECONDS));
        return new Stretch(sitting.id(), here.file(), from, to, true, words(sitting) + noteWords(here, note));
    }

    /**
     * A recording from its beginning, 15 s at most.
     *
     * @param sitting any sitting
     * @param recording which of its recordings, from 0
     * @return the stretch
     */
    public static Stretch ofRecording(Sitting sitting, int recording) {
        KeptRecording kept = sitting.recordings().get(recording);
        double to = Math.min(LONGEST_SECONDS, kept.facts().durationSeconds());
        return new Stretch(sitting.id(), recording, 0, to, false, words(sitting) + kept.fileName());
    }

    private static String words(Sitting sitting) {
        return sitting.instrument() + ", sitting " + sitting.id() + ": ";
    }

    private static String noteWords(Fingerboard.Note note, int number) {
        String place = note.place()
                .map(p -> "string " + p.string() + ", fret " + p.fret())
                .orElse("note " + (number + 1));
        return place
                + note.result()
                        .pitch()
                        .found()
                        .map(p -> " (" + p.nearest() + ", " + Figures.text(p.hz().value(), 1) + " Hz)")
                        .orElse("");
    }
}
