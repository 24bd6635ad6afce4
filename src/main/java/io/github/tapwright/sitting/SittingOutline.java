package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.TapResult;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What questions about many sittings need of each: its conditions and the figures of its latest analysis, without recordings,
 * strikes, notes and the response curve's points.
 *
 * @param id its number in the archive
 * @param instrument whose sitting it was
 * @param takenAt when the recordings were made
 * @param conditions what was written down
 * @param procedure what it was made for, a {@link Procedure#key()}
 * @param methodVersion which method made the figures
 * @param resonances under the names that hold, lowest first; empty if nothing was found, or not taps but something else was measured
 * @param thirdOctaves the response curve boiled down; empty without a curve
 * @param plucks how loud its plucks were; empty if something else was measured
 * @param setAside why it is used for nothing beyond itself; empty if it is in use
 */
public record SittingOutline(
        SittingId id,
        ShopNumber instrument,
        Moment takenAt,
        Conditions conditions,
        String procedure,
        String methodVersion,
        List<ShownResonance> resonances,
        Optional<ThirdOctaves> thirdOctaves,
        Optional<PluckLevels> plucks,
        Optional<OutOfUse> setAside) {

    /** Keeps a copy of the list. */
    public SittingOutline {
        resonances = List.copyOf(resonances);
    }

    /**
     * The outline of a sitting that is known whole.
     *
     * @param sitting which
     * @return the same as {@link SittingStore#outlines} gives
     */
    public static SittingOutline of(Sitting sitting) {
        Analysis latest = sitting.latest();
        return new SittingOutline(
                sitting.id(),
                sitting.instrument(),
                sitting.takenAt(),
                sitting.conditions(),
                latest.findings().procedure().key(),
                latest.methodVersion(),
                sitting.resonances(latest),
                latest.taps().flatMap(TapResult::curve).map(ThirdOctaves::of),
                latest.findings().plucks().map(PluckLevels::of),
                sitting.setAside());
    }

    /**
     * Joins what was found with what the maker said.
     *
     * @param found resonances of one analysis, lowest first
     * @param given everything the maker said about the sitting's names, in the order it was said: of two names for one
     *     resonance the later holds
     * @return the resonances under the names that hold
     */
    public static List<ShownResonance> shown(List<NamedResonance> found, List<GivenName> given) {
        List<Naming.Verdict> verdicts = Naming.join(
                found.stream()
                        .map(r -> new Naming.Suggestion(
                                r.resonance().frequencyHz().value(), r.name(), r.reason()))
                        .toList(),
                given);
        return IntStream.range(0, found.size())
                .mapToObj(i -> ShownResonance.of(i + 1, found.get(i), verdicts.get(i)))
                .toList();
    }
}
