package io.github.tapwright.tap;

import io.github.tapwright.signal.Fourier;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the strikes of a set of tracks, judges each alone and then against its fellows. */
final class StrikeJudge {

    private static final double MUCH_SHORTER = 0.6;
    private static final int FEWEST_FELLOWS = 3;

    private final List<HeardTrack> tracks;
    private final TapSettings settings;
    private final boolean areRecordings;
    private final List<Candidate> candidates = new ArrayList<>();

    /**
     * Prepares to judge.
     *
     * @param tracks in order
     * @param settings what to look for
     * @param areRecordings whether each track is a recording, not a part of one that still runs
     */
    StrikeJudge(List<HeardTrack> tracks, TapSettings settings, boolean areRecordings) {
        this.tracks = tracks;
        this.settings = settings;
        this.areRecordings = areRecordings;
    }

    StrikeSet judge() {
        for (int source = 0; source < tracks.size(); source++) {
            collect(source, tracks.get(source));
        }
        rejectUnwanted();
        rejectMuchShorter();
        rejectOutliers();
        List<Strike> strikes = candidates.stream().map(Candidate::strike).toList();
        List<Candidate> used = used();
        Optional<Decays> decays = used.isEmpty() ? Optional.empty() : Optional.of(decays(used));
        return new StrikeSet(strikes, decays, notes(decays));
    }

    private void collect(int source, HeardTrack track) {
        List<Contact> contacts = track.contacts();
        for (int i = 0; i < contacts.size(); i++) {
            double next = i + 1 < contacts.size() ? contacts.get(i + 1).onsetSeconds() : Double.POSITIVE_INFINITY;
            candidates.add(new Candidate(source, contacts.get(i), track.quieted(), next, settings));
        }
    }

    private Hum hum() {
        return Hum.shared(tracks.stream().map(HeardTrack::hum).toList());
    }

    private List<Candidate> used() {
        return candidates.stream().filter(Candidate::usable).toList();
    }

    /** What the maker does not want must not be the measure of the others either. */
    private void rejectUnwanted() {
        for (Candidate c : candidates) {
            if (settings.setAside().stream().anyMatch(s -> s.isSameAs(SetAside.of(c.strike())))) {
                c.reject(RejectionReason.SET_ASIDE, "");
            }
        }
    }

    /** All decays are cut to the shortest, so one early next tap must not shorten everybody. */
    private void rejectMuchShorter() {
        List<Candidate> used = used();
        if (used.size() < FEWEST_FELLOWS) {
            return;
        }
        double usual =
                Median.of(used.stream().mapToDouble(Candidate::availableSeconds).toArray());
        for (Candidate c : used) {
            if (c.availableSeconds() < MUCH_SHORTER * usual) {
                c.reject(
                        RejectionReason.CUT_OFF,
                        "decay recorded for %.2f s, its fellows' for %.2f s",
                        c.availableSeconds(),
                        usual);
            }
        }
    }

    private void rejectOutliers() {
        List<Candidate> used = used();
        if (used.size() <= FEWEST_FELLOWS) {
            return;
        }
        double[] distances = new SpectralDistance(decays(used), settings).distancesDb();
        double limit = Math.max(6, 3 * Median.of(distances));
        for (int i = 0; i < distances.length; i++) {
            if (distances[i] > limit) {
                used.get(i)
                        .reject(
                                RejectionReason.OUTLIER,
                                "spectrum %.1f dB from the others' median, %.1f dB allowed",
                                distances[i],
                                limit);
            }
        }
    }

    private Decays decays(List<Candidate> used) {
        double rate = tracks.get(0).track().decimatedRateHz();
        double seconds =
                used.stream().mapToDouble(Candidate::availableSeconds).min().orElseThrow();
        int length = Fourier.quickLength((int) Math.floor(seconds * rate));
        double[][] samples = used.stream().map(c -> c.decay(length)).toArray(double[][]::new);
        return new Decays(rate, samples, hum().tonesHz());
    }

    private List<String> notes(Optional<Decays> decays) {
        List<String> notes = nothingHeard();
        Hum hum = hum();
        if (hum.isHeard() && decays.isPresent()) {
            notes.add(String.format(
                    Locale.ROOT,
                    "mains hum at multiples of %.2f Hz was modelled and taken out of the fit",
                    hum.fundamentalHz()));
        }
        if (tracks.stream().anyMatch(t -> t.track().isCoarse())) {
            notes.add(
                    "the samples are written coarsely, as by 8 bits: a strike cut flat below full scale may pass unseen and weak"
                            + " resonances drown; record with 16 bits or more");
        }
        if (candidates.stream().anyMatch(c -> c.passesUnjudged(settings))) {
            notes.add("no quiet before the strike, so the noise was not judged; leave a second of quiet before each");
        }
        decays.flatMap(this::unlike).ifPresent(notes::add);
        for (SetAside unwanted : settings.setAside()) {
            if (candidates.stream().noneMatch(c -> unwanted.isSameAs(SetAside.of(c.strike())))) {
                notes.add(String.format(
                        Locale.ROOT,
                        "no strike was found at %.3f s of recording %d, which the maker set aside",
                        unwanted.onsetSeconds(),
                        unwanted.source() + 1));
            }
        }
        return notes;
    }

    private List<String> nothingHeard() {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < tracks.size(); i++) {
            if (tracks.get(i).track().isSilent()) {
                String which = tracks.size() == 1 ? "the recording" : "recording " + (i + 1);
                notes.add(which + " holds no sound at all, every sample is zero; choose the input the microphone is on,"
                        + " let the program use it, and watch the level before you record");
            }
        }
        if (candidates.isEmpty() && notes.size() < tracks.size()) {
            notes.add("nothing stands out from the noise as a tap does; tap harder or move the microphone closer, and"
                    + " leave two seconds between taps");
        }
        return notes;
    }

    private Optional<String> unlike(Decays decays) {
        if (!areRecordings) {
            return Optional.empty();
        }
        List<Strike> strikes = used().stream().map(Candidate::strike).toList();
        return new UnlikeParts(tracks.size(), strikes, decays, settings).note();
    }
}
