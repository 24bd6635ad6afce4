package io.github.tapwright.sitting;

import io.github.tapwright.note.run.FastDecay;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.statistics.Estimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The resonance of the body that lies nearest to a dead note, and may be what takes its energy.
 *
 * @param name the name that holds, empty if it has none
 * @param frequencyHz of the resonance
 */
public record NearResonance(Optional<String> name, Estimate frequencyHz) {

    /** A resonance further off than this share of the pitch is none of the note's business. Chosen, not measured. */
    private static final double NEAR = 0.03;

    /**
     * Looks for it.
     *
     * @param note the dead note
     * @param tuning of the guitar
     * @param resonances of a sitting of taps on the same instrument
     * @return the nearest within 3 %, empty if there is none
     */
    public static Optional<NearResonance> of(FastDecay note, Tuning tuning, List<ShownResonance> resonances) {
        double hz = tuning.hz(note.place());
        return resonances.stream()
                .map(r -> new NearResonance(r.name(), r.found().resonance().frequencyHz()))
                .filter(r -> r.distance(hz) < NEAR)
                .min(Comparator.comparingDouble(r -> r.distance(hz)));
    }

    private double distance(double hz) {
        return Math.abs(frequencyHz.value() / hz - 1);
    }
}
