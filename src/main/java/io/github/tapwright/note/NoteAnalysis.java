package io.github.tapwright.note;

import io.github.tapwright.recording.SampleStream;
import java.util.List;
import java.util.Optional;

/**
 * From a recording of one plucked string to pitch, partials and decay times.
 *
 * <p>Works on 8 to 192 kHz; a recording is read once, and no more than its decimated first two minutes are kept. See
 * docs/methods/plucked-notes.md.
 */
public final class NoteAnalysis {

    /** Changes whenever the same recording could give other numbers. */
    public static final String METHOD_VERSION = "note-1";

    private static final double SKIP_SECONDS = 0.03;
    private static final double SURVEY_SECONDS = 0.8;
    private static final double LONGEST_FIT_SECONDS = 20;
    private static final double LEAST_SECONDS = 0.12;

    private NoteAnalysis() {}

    /**
     * Analyses one note.
     *
     * @param stream read to its end, not closed
     * @param settings what to look for
     * @return what the recording says, refusals with their reasons included
     * @throws IllegalArgumentException if the recording's rate is below 8,000 Hz
     */
    public static NoteResult analyse(SampleStream stream, NoteSettings settings) {
        if (stream.sampleRate().hertz() < 8000) {
            throw new IllegalArgumentException("a recording at "
                    + Math.round(stream.sampleRate().hertz())
                    + " samples a second holds too little of a note; record at 44100 or more");
        }
        NoteTrack track = NoteTrack.read(stream, settings);
        NoteReport report = new NoteReport(track, settings);
        Optional<Pluck> pluck = Pluck.find(track.signal(), track.rateHz());
        if (pluck.isEmpty()) {
            return report.refused("the recording is silent");
        }
        FreeDecay decay = FreeDecay.after(track, pluck.orElseThrow());
        report.heard(decay);
        double rate = track.rateHz();
        int from = decay.pluck().onset() + (int) (SKIP_SECONDS * rate);
        if (decay.end() - from < LEAST_SECONDS * rate) {
            return report.refused("less than 0.15 s of free decay; record longer and let the string ring");
        }
        int surveyed = (int) Math.min(decay.end(), from + SURVEY_SECONDS * rate);
        SpectralPeaks peaks = new SpectralPeaks(track.signal(), from, surveyed, rate, track.bandHz());
        List<Double> guesses =
                PitchDetectors.guesses(track.signal(), from, decay.end(), rate, settings.lowestPitchHz());
        Optional<HarmonicEvidence.Series> series = new HarmonicEvidence(peaks, settings, track.bandHz()).best(guesses);
        if (series.isEmpty()) {
            return report.refused("no series of partials stands out: no plucked string, too noisy, or several at once");
        }
        int fitted = (int) Math.min(decay.end(), from + LONGEST_FIT_SECONDS * rate);
        NoteSpectrum spectrum = new NoteSpectrum(track.signal(), from, fitted, rate);
        PartialSurvey survey = new PartialSurvey(spectrum, series.orElseThrow(), track.bandHz());
        return report.of(decay, survey, (from - decay.pluck().onset()) / rate, spectrum.seconds());
    }
}
