package io.github.tapwright.sitting;

import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;

/** Finds the taps against which a run of notes is held: those on the same instrument, nearest in time. */
public final class FindTaps {

    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     */
    public FindTaps(SittingStore sittings) {
        this.sittings = sittings;
    }

    /**
     * The taps nearest in time, with the hole not covered, that found a resonance.
     *
     * @param run any sitting
     * @return a sitting of taps on the same instrument; empty if there is none, or this is no run of notes
     */
    public Optional<Sitting> near(Sitting run) {
        if (run.latest().findings().notes().isEmpty()) {
            return Optional.empty();
        }
        return sittings.list(Optional.of(run.instrument())).stream()
                .filter(s -> s.tapsTheBodyAsItIs() && !s.resonances().isEmpty())
                .min(Comparator.comparing(s -> Duration.between(
                                s.takenAt().instant(), run.takenAt().instant())
                        .abs()))
                .flatMap(s -> sittings.find(s.id()));
    }
}
