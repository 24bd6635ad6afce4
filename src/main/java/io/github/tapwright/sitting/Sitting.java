package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.TapResult;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A sitting as the archive keeps it.
 *
 * @param id its number in the archive
 * @param instrument whose sitting it was
 * @param takenAt when the recordings were made
 * @param addedAt when it was added to the archive
 * @param conditions what was written down
 * @param recordings the recordings, in the order given; at least one
 * @param analyses what was found, oldest first; at least one
 * @param givenNames everything the maker said about names, oldest first
 * @param setAside why it is used for nothing beyond itself; empty if it is in use
 */
public record Sitting(
        SittingId id,
        ShopNumber instrument,
        Moment takenAt,
        Instant addedAt,
        Conditions conditions,
        List<KeptRecording> recordings,
        List<Analysis> analyses,
        List<GivenName> givenNames,
        Optional<OutOfUse> setAside) {

    /** Keeps copies of the lists and refuses half a sitting. */
    public Sitting {
        recordings = List.copyOf(recordings);
        analyses = List.copyOf(analyses);
        givenNames = List.copyOf(givenNames);
        if (recordings.isEmpty() || analyses.isEmpty()) {
            throw new IllegalArgumentException("sitting " + id + " lacks its recordings or its results");
        }
    }

    /**
     * The analysis made last.
     *
     * @return the one to show first
     */
    public Analysis latest() {
        return analyses.get(analyses.size() - 1);
    }

    /**
     * Refuses a sitting that is for something else than taps.
     *
     * @return this sitting
     * @throws RefusedEntryException if it is for notes or plucks
     */
    public Sitting requireTaps() {
        if (latest().taps().isEmpty()) {
            throw new RefusedEntryException("sitting " + id + " is for "
                    + latest().findings().procedure().key() + "; choose a sitting of taps");
        }
        return this;
    }

    /**
     * The resonances of one analysis under the names that hold.
     *
     * @param analysis one of {@link #analyses()}
     * @return lowest first; empty if the sitting was for something else
     */
    public List<ShownResonance> resonances(Analysis analysis) {
        return SittingOutline.shown(found(analysis), givenNames);
    }

    /**
     * The maker's names that fit no resonance of one analysis; they are kept and shown, not dropped.
     *
     * @param analysis one of {@link #analyses()}
     * @return oldest first
     */
    public List<GivenName> unmatchedNames(Analysis analysis) {
        List<Naming.Suggestion> found = suggestions(analysis);
        return givenNames.stream()
                .filter(g -> Naming.nearest(found, g.frequencyHz()).isEmpty())
                .toList();
    }

    static List<Naming.Suggestion> suggestions(Analysis analysis) {
        return found(analysis).stream()
                .map(r -> new Naming.Suggestion(r.resonance().frequencyHz().value(), r.name(), r.reason()))
                .toList();
    }

    private static List<NamedResonance> found(Analysis analysis) {
        return analysis.taps().map(TapResult::resonances).orElse(List.of());
    }
}
