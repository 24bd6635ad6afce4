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
    public static final String METHOD_VERSION = "note-5";

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
        requireRate(stream);
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
        Finding<HarmonicEvidence.Series> series = series(track, decay, from, settings);
        if (series.found().isEmpty()) {
            return report.refused(series.refusal().orElse(""));
        }
        int fitted = (int) Math.min(decay.end(), from + LONGEST_FIT_SECONDS * rate);
        NoteSpectrum spectrum = new NoteSpectrum(track.signal(), from, fitted, rate);
        PartialSurvey survey = new PartialSurvey(spectrum, series.found().orElseThrow(), track.bandHz());
        return report.of(decay, survey, (from - decay.pluck().onset()) / rate, spectrum.seconds());
    }

    /**
     * Only what a note's pitch is, to some cents: enough to tell which string was plucked, in a fraction of the time.
     *
     * @param stream read to its end, not closed
     * @param settings what to look for
     * @return the pitch, or why there is none
     * @throws IllegalArgumentException if the recording's rate is below 8,000 Hz
     */
    public static RoughPitch roughPitch(SampleStream stream, NoteSettings settings) {
        requireRate(stream);
        NoteTrack track = NoteTrack.read(stream, settings);
        NoteReport report = new NoteReport(track, settings);
        Optional<Pluck> pluck = Pluck.find(track.signal(), track.rateHz());
        if (pluck.isEmpty()) {
            return report.roughly(new Finding.NotFound<>("the recording is silent"));
        }
        FreeDecay decay = FreeDecay.after(track, pluck.orElseThrow());
        report.heard(decay);
        int from = decay.pluck().onset() + (int) (SKIP_SECONDS * track.rateHz());
        return report.roughly(series(track, decay, from, settings).map(s -> s.hz(1)));
    }

    private static void requireRate(SampleStream stream) {
        if (stream.sampleRate().hertz() < 8000) {
            throw new IllegalArgumentException("a recording at "
                    + Math.round(stream.sampleRate().hertz())
                    + " samples a second holds too little of a note; record at 44100 or more");
        }
    }

    private static Finding<HarmonicEvidence.Series> series(
            NoteTrack track, FreeDecay decay, int from, NoteSettings settings) {
        double rate = track.rateHz();
        if (decay.end() - from < LEAST_SECONDS * rate) {
            return new Finding.NotFound<>("less than 0.15 s of free decay; record longer and let the string ring");
        }
        int surveyed = (int) Math.min(decay.end(), from + SURVEY_SECONDS * rate);
        SpectralPeaks peaks = new SpectralPeaks(track.signal(), from, surveyed, rate, track.bandHz());
        List<Double> guesses =
                PitchDetectors.guesses(track.signal(), from, decay.end(), rate, settings.lowestPitchHz());
        return new HarmonicEvidence(peaks, settings, track.bandHz())
                .best(guesses)
                .<Finding<HarmonicEvidence.Series>>map(Finding.Found::new)
                .orElseGet(() -> new Finding.NotFound<>(
                        "no series of partials stands out: no plucked string, too noisy, or several at once"));
    }
}
