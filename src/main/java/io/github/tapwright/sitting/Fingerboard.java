package io.github.tapwright.sitting;

import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.FastDecays;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.PlayingOrder;
import io.github.tapwright.note.run.Tuning;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A run of notes over the fingerboard, and what stands out in it.
 *
 * @param notes in the order played
 * @param fastDecays notes that die away much faster than their neighbours
 * @param warnings what the reader must know
 * @param settings how the run was read
 * @param methodVersion version of the method that cut the run and gave the notes their places; each note carries its own
 */
public record Fingerboard(
        List<Note> notes, List<FastDecay> fastDecays, List<String> warnings, Settings settings, String methodVersion) {

    /** Keeps copies of the lists. */
    public Fingerboard {
        notes = List.copyOf(notes);
        fastDecays = List.copyOf(fastDecays);
        warnings = List.copyOf(warnings);
    }

    /**
     * How many places have neighbours enough to tell whether they die away fast.
     *
     * @return 0 if nothing could be judged
     */
    public int judged() {
        return FastDecays.judged(earlyDecayTimesSeconds(notes));
    }

    /**
     * Whether a place has neighbours enough to tell whether it dies away fast.
     *
     * @param place string and fret
     * @return false if it was not played, has no early decay, or too few neighbours have
     */
    public boolean wasJudged(Fret place) {
        return FastDecays.canBeJudged(place, earlyDecayTimesSeconds(notes));
    }

    /** The early decay is what a wolf or dead note loses first; a place played twice counts with its longer one. */
    static Map<Fret, Double> earlyDecayTimesSeconds(List<Note> notes) {
        Map<Fret, Double> times = new HashMap<>();
        for (Note note : notes) {
            note.place()
                    .ifPresent(at -> note.earlyDecayTimeSeconds()
                            .found()
                            .ifPresent(seconds -> times.merge(at, seconds, Math::max)));
        }
        return times;
    }

    /**
     * How a run is read.
     *
     * @param tuning what the open strings sound
     * @param order how the run was played
     * @param notes what to look for in each note
     */
    public record Settings(Tuning tuning, PlayingOrder order, NoteSettings notes) {

        /** A classical guitar, string by string. */
        public static final Settings STANDARD =
                new Settings(Tuning.CLASSICAL, PlayingOrder.STRING_BY_STRING, NoteSettings.STANDARD);
    }

    /**
     * One note of the run.
     *
     * @param file which recording it came from, from 0
     * @param attackSeconds when it begins in that recording
     * @param result pitch, partials, decay
     * @param levels its levels re full scale; empty where there is no sound
     * @param place string and fret; empty where pitch and order give none
     */
    public record Note(
            int file, double attackSeconds, NoteResult result, Optional<SoundLevels> levels, Optional<Fret> place) {

        /**
         * Its decay time: T30 where the recording carries it, else T20.
         *
         * @return seconds for 60 dB, or why the recording carries neither
         */
        public Finding<Double> decayTimeSeconds() {
            return result.decay().decayTime().map(d -> d.seconds().value());
        }

        /**
         * Its early decay time.
         *
         * @return seconds for 60 dB at the pace of the first 10 dB, or why the recording does not carry it
         */
        public Finding<Double> earlyDecayTimeSeconds() {
            return result.decay().early().map(d -> d.seconds().value());
        }

        /**
         * How far its pitch lies above the fret's, equally tempered.
         *
         * @param tuning of the guitar
         * @return cents, or why there is no pitch or no place
         */
        public Finding<Double> pitchErrorCents(Tuning tuning) {
            if (place.isEmpty()) {
                return new Finding.NotFound<>(whyNoPlace().orElse(""));
            }
            return result.pitch().map(p -> tuning.centsAbove(p.hz().value(), place.get()));
        }

        /**
         * Its greatest A-weighted level, fast.
         *
         * @return dB re full scale, or why there is none
         */
        public Finding<Double> lafMaxDb() {
            return levels.<Finding<Double>>map(
                            l -> new Finding.Found<>(l.lafMax().levelDb()))
                    .orElseGet(() -> new Finding.NotFound<>("nothing but silence"));
        }

        /**
         * Why it has no string and fret.
         *
         * @return one line for the maker, empty if it has them
         */
        public Optional<String> whyNoPlace() {
            if (place.isPresent()) {
                return Optional.empty();
            }
            return Optional.of(
                    result.pitch().refusal().orElse("its pitch lies on no fret of this tuning within 60 cents"));
        }
    }
}
