package io.github.tapwright.tap;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.List;
import java.util.Optional;

/**
 * The strikes of a set of recordings, judged, and the free decays of those that can be used.
 *
 * @param strikes every strike found, in order of recording and time
 * @param decays the used strikes' decays, empty if none can be used
 * @param notes what the reader must know about how the strikes were taken
 */
public record StrikeSet(List<Strike> strikes, Optional<Decays> decays, List<String> notes) {

    /** Keeps copies of the lists. */
    public StrikeSet {
        strikes = List.copyOf(strikes);
        notes = List.copyOf(notes);
    }

    /**
     * Finds and judges the strikes of recordings made in one set-up.
     *
     * @param tracks one for each recording, all decimated for the same settings
     * @param settings what to look for
     * @return the strikes with their verdicts, and the decays
     * @throws UnreadableRecordingException if the recordings have different sample rates
     */
    public static StrikeSet find(List<TapTrack> tracks, TapSettings settings) {
        // By numbers, not by records: a record's first comparison costs a short analysis a hundredth of its time.
        if (tracks.stream().mapToDouble(t -> t.sampleRate().hertz()).distinct().count() > 1) {
            throw new UnreadableRecordingException(
                    "recordings of different sample rates cannot be one set; analyse them one by one");
        }
        List<HeardTrack> heard =
                tracks.stream().map(t -> HeardTrack.of(t, settings)).toList();
        return new StrikeJudge(heard, settings, true).judge();
    }

    /**
     * Judges the strikes of tracks that were listened to before, the parts of one recording that still runs. Whether all parts sound
     * like one body is asked of the whole alone, once it is kept.
     *
     * @param tracks of one sample rate, heard with the same settings but for the strikes set aside
     * @param settings what to look for
     * @return the strikes with their verdicts, and the decays
     */
    public static StrikeSet judge(List<HeardTrack> tracks, TapSettings settings) {
        return new StrikeJudge(tracks, settings, false).judge();
    }
}
