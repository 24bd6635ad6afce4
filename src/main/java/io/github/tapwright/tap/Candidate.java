package io.github.tapwright.tap;

import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** One contact on its way to a verdict: what was measured of it, and what speaks against it so far. */
final class Candidate {

    private static final double LEAST_DROP_DB = 20;
    private static final double SHORTEST_SECONDS = 0.08;

    private final int source;
    private final Contact contact;
    private final QuietedTrack track;
    private final double peakDbfs;
    private final double snrDb;
    private final double availableSeconds;
    private final double dropDb;
    private final boolean endsInNoise;
    private final List<Rejection> rejections = new ArrayList<>();

    Candidate(int source, Contact contact, QuietedTrack track, double nextOnsetSeconds, TapSettings settings) {
        this.source = source;
        this.contact = contact;
        this.track = track;
        double onset = contact.onsetSeconds();
        this.peakDbfs = 20 * Math.log10(Math.max(1e-9, track.peaks().largest(onset - 0.003, onset + 0.06)));
        double start = contact.decayStartSeconds();
        this.snrDb = track.snrDb(start);
        double end = Math.min(nextOnsetSeconds - 0.004, track.endSeconds());
        this.availableSeconds = Math.max(0, Math.min(end - start, settings.longestDecaySeconds()));
        double endLevel = track.meanSquare(start + availableSeconds - 0.03, start + availableSeconds);
        this.dropDb =
                10 * Math.log10(Math.max(1e-30, track.meanSquare(start, start + 0.03)) / Math.max(1e-30, endLevel));
        this.endsInNoise = endLevel < 4 * track.noiseMeanSquare();
        judgeAlone(settings);
    }

    private void judgeAlone(TapSettings settings) {
        double onset = contact.onsetSeconds();
        int run = track.peaks().longestClippedRun(onset - 0.003, contact.decayStartSeconds() + 0.15);
        if (run > 0) {
            reject(RejectionReason.CLIPPED, "%d samples in a row cut flat", run);
        }
        contact.laterContacts().stream()
                .max(Comparator.comparingDouble(Contact.Later::strengthDb))
                .ifPresent(l -> reject(
                        RejectionReason.DOUBLE_STRIKE,
                        "second contact %.0f ms later, %s dB re the first",
                        1000 * l.delaySeconds(),
                        Figures.text(l.strengthDb(), 0)));
        if (snrDb < settings.minimumSnrDb() && roomIsHeard()) {
            reject(
                    RejectionReason.TOO_QUIET,
                    "%s dB above the noise, %.0f dB needed",
                    Figures.text(snrDb, 0),
                    settings.minimumSnrDb());
        }
        rejectCutOff();
    }

    private void rejectCutOff() {
        if (dropDb < LEAST_DROP_DB && !endsInNoise) {
            reject(
                    RejectionReason.CUT_OFF,
                    "decay recorded for %.2f s and %.0f dB only, %.0f dB needed",
                    availableSeconds,
                    Math.max(0, dropDb),
                    LEAST_DROP_DB);
        } else if (availableSeconds < SHORTEST_SECONDS) {
            reject(
                    RejectionReason.CUT_OFF,
                    "decay recorded for %.2f s only, %.2f s needed",
                    availableSeconds,
                    SHORTEST_SECONDS);
        }
    }

    /** A short file that starts on the hit holds nothing but the decay, so there is no noise to stand above. */
    private boolean roomIsHeard() {
        return contact.onsetSeconds() > 0.15 || track.endSeconds() > 1;
    }

    /** Whether it is too quiet for a strike but was let pass, as no room was heard to judge it by. */
    boolean passesUnjudged(TapSettings settings) {
        return usable() && snrDb < settings.minimumSnrDb();
    }

    void reject(RejectionReason reason, String figure, Object... values) {
        rejections.add(new Rejection(reason, String.format(Locale.ROOT, figure, values)));
        rejections.sort(Comparator.comparing(Rejection::reason));
    }

    boolean usable() {
        return rejections.isEmpty();
    }

    double availableSeconds() {
        return availableSeconds;
    }

    /** The original samples of the decay, hum and all. */
    double[] decay(int length) {
        return track.original(contact.decayStartSeconds(), length);
    }

    Strike strike() {
        return new Strike(source, contact.onsetSeconds(), peakDbfs, snrDb, rejections);
    }
}
