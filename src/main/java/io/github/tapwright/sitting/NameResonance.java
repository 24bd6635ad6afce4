package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.statistics.Figures;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Lets the maker say what a resonance is; what the maker says holds against every suggestion. */
public final class NameResonance {

    private final SittingStore sittings;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param clock what tells the time
     */
    public NameResonance(SittingStore sittings, Clock clock) {
        this.sittings = sittings;
        this.clock = clock;
    }

    /**
     * Names the resonance at a frequency of the latest analysis.
     *
     * @param id which sitting
     * @param frequencyHz where, within {@link Naming#TOLERANCE}
     * @param name a mode's key or words, or the maker's own name; empty says that it has none
     * @return the sitting with the name
     * @throws RefusedEntryException if there is no such sitting or no resonance there
     */
    public Sitting atFrequency(SittingId id, double frequencyHz, Optional<String> name) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        List<Naming.Suggestion> found = Sitting.suggestions(sitting.latest());
        int index = Naming.nearest(found, frequencyHz)
                .orElseThrow(() -> new RefusedEntryException(String.format(
                        Locale.ROOT,
                        "sitting %s has no resonance near %.1f Hz; give a frequency or a number from its list",
                        id,
                        frequencyHz)));
        return keep(id, found.get(index).frequencyHz(), name);
    }

    /**
     * Names a resonance by its number in the list of the latest analysis.
     *
     * @param id which sitting
     * @param ordinal from 1, lowest frequency first
     * @param name a mode's key or words, or the maker's own name; empty says that it has none
     * @return the sitting with the name
     * @throws RefusedEntryException if there is no such sitting or no such number
     */
    public Sitting atOrdinal(SittingId id, int ordinal, Optional<String> name) {
        Sitting sitting = new ShowSitting(sittings).show(id);
        List<Naming.Suggestion> found = Sitting.suggestions(sitting.latest());
        if (ordinal < 1 || ordinal > found.size()) {
            throw new RefusedEntryException("sitting " + id + " has " + Figures.count(found.size(), "resonance")
                    + ", none of number " + ordinal + "; give a number or a frequency from its list");
        }
        return keep(id, found.get(ordinal - 1).frequencyHz(), name);
    }

    private Sitting keep(SittingId id, double frequencyHz, Optional<String> name) {
        sittings.addName(id, new GivenName(frequencyHz, name, clock.instant()));
        return new ShowSitting(sittings).show(id);
    }
}
