package io.github.tapwright.sitting.live;

import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.Strike;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the taps heard so far say; a view while the maker works. The numbers that are kept come from the ordinary
 * analysis of the whole recording.
 *
 * @param strikes every strike so far with its verdict, in order of time; times from the start of the recording
 * @param curve the response curve of the used strikes of the last minute; empty if none could be used
 * @param resonances of the used strikes of the last minute, as of the latest fit; empty before it
 * @param fittedStrikes how many used strikes the resonances rest on; fewer than the curve's while a fit runs
 * @param notes what was noticed on the way, such as mains hum
 */
public record TapsSoFar(
        List<Strike> strikes,
        Optional<ResponseCurve> curve,
        List<NamedResonance> resonances,
        int fittedStrikes,
        List<String> notes) {

    /** Before the first tap. */
    public static final TapsSoFar NOTHING = new TapsSoFar(List.of(), Optional.empty(), List.of(), 0, List.of());

    /** Keeps copies of the lists. */
    public TapsSoFar {
        strikes = List.copyOf(strikes);
        resonances = List.copyOf(resonances);
        notes = List.copyOf(notes);
    }

    /**
     * How many strikes can be used so far.
     *
     * @return 0 or more
     */
    public int usedCount() {
        return (int) strikes.stream().filter(Strike::used).count();
    }

    /** These strikes and this curve, with the resonances of another moment. */
    TapsSoFar withResonancesOf(TapsSoFar fitted) {
        return new TapsSoFar(strikes, curve, fitted.resonances, fitted.fittedStrikes, notes);
    }

    /** All of this and a note more. */
    TapsSoFar withNote(String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(note);
        return new TapsSoFar(strikes, curve, resonances, fittedStrikes, all);
    }
}
