package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.RecordingSource;
import io.github.tapwright.sitting.SourceRecording;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Plays a stretch of a recording, softly at first: a tap recorded near full scale would startle at a gain set for
 * speech, and loud sound harms hearing.
 */
public final class PlayBack {

    /** What a face shows beside its play button. */
    public static final String CAUTION = "Loud sound harms hearing for good. Playback begins softly: turn your"
            + " amplifier down first, take headphones off until you know how loud it is, then turn up slowly."
            + " Follow your local rules on noise at work.";

    /** The loudest sample is played no louder than this at first; common practice, no source. */
    public static final double FIRST_PEAK_DBFS = -20;

    private static final double LONGEST_SECONDS = 120;

    private final RecordingSource source;
    private final SoundOutput output;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     * @param output what makes them heard
     */
    public PlayBack(RecordingSource source, SoundOutput output) {
        this.source = source;
        this.output = output;
    }

    /**
     * Begins to play, its peak at {@link #FIRST_PEAK_DBFS} at most; {@link PlayingSound#setGainDb} turns up, never
     * beyond what was recorded.
     *
     * @param file the recording
     * @param span which stretch of it, two minutes at most
     * @return the sound as it plays; the caller closes it
     * @throws RefusedEntryException if the stretch is too long, or lies beyond the recording's end
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the file cannot be read, or there is no
     *     output
     */
    public PlayingSound play(Path file, Excerpts.Span span) {
        if (span.toSeconds() - span.fromSeconds() > LONGEST_SECONDS) {
            throw new RefusedEntryException("play two minutes at most; choose a shorter stretch");
        }
        List<Recording> cut = new ArrayList<>();
        try (SourceRecording recording = source.open(file)) {
            Excerpts.each(recording.stream(), List.of(span), (i, excerpt) -> cut.add(excerpt));
        }
        Recording sound = cut.get(0);
        if (sound.length() == 0) {
            throw new RefusedEntryException("the recording ends before " + span.fromSeconds() + " s");
        }
        return output.play(sound, firstGainDb(sound));
    }

    /**
     * The gain a sound is begun with.
     *
     * @param sound what is played
     * @return dB, 0 or less
     */
    static double firstGainDb(Recording sound) {
        double peak = 0;
        for (int c = 0; c < sound.channelCount(); c++) {
            for (double x : sound.channel(c)) {
                peak = Math.max(peak, Math.abs(x));
            }
        }
        return peak == 0 ? 0 : Math.min(0, FIRST_PEAK_DBFS - 20 * Math.log10(peak));
    }
}
