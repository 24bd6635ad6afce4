package io.github.tapwright.sitting;

import io.github.tapwright.recording.Excerpts;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.util.List;

/** Takes a stretch of sound out of a kept original, in the channel that was analysed; the original is only read. */
public final class CutStretch {

    private final SittingStore sittings;
    private final NamedSource source;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param source what opens sound files
     */
    public CutStretch(SittingStore sittings, RecordingSource source) {
        this.sittings = sittings;
        this.source = new NamedSource(source);
    }

    /**
     * Cuts.
     *
     * @param stretch which stretch
     * @return its sound, one channel, samples re full scale as recorded
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such sitting
     * @throws UnreadableRecordingException if the original is damaged or shorter than that
     */
    public Recording cut(Stretch stretch) {
        KeptRecording kept =
                new ShowSitting(sittings).show(stretch.sitting()).recordings().get(stretch.recording());
        SoundFile file = new SoundFile(sittings.locate(kept.original()), kept.fileName());
        Recording cut = source.read(
                file,
                recording -> new Excerpts(
                                recording.stream(),
                                List.of(new Excerpts.Span(stretch.fromSeconds(), stretch.toSeconds())))
                        .next()
                        .only(kept.facts().channelUsed()));
        if (cut.length() == 0) {
            throw new UnreadableRecordingException(kept.fileName() + " ends before " + stretch.words() + " begins");
        }
        return cut;
    }
}
