package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Suggests names by rules a maker can check; leaves the name empty where the rules are not sure. */
public final class ModeNaming {

    private ModeNaming() {}

    /**
     * Names resonances.
     *
     * @param resonances lowest first
     * @param hole whether the soundhole was open
     * @return the same resonances, in order, with suggested names and reasons
     */
    public static List<NamedResonance> suggest(List<Resonance> resonances, HoleState hole) {
        List<NamedResonance> named = new ArrayList<>();
        for (Resonance r : resonances) {
            named.add(new NamedResonance(r, Optional.empty(), String.format(Locale.ROOT, "no rule fits %s", hole)));
        }
        return named;
    }
}
