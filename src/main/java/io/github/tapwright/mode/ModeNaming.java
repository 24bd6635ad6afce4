package io.github.tapwright.mode;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Suggests names by rules a maker can check, and leaves the name empty where the rules are not sure.
 *
 * <p>Each name has a range of frequency; among the resonances in it that have no name yet and lie less than 35 dB below
 * the strongest of all, the strongest is taken, and only if it stands 6 dB above the next. Two of like strength are
 * a top and a back if the lower is the stronger. Ranges: main air 85–125 Hz and main top 150–250 Hz [ChristensenVistisen1980];
 * from the top as found, main back 3 to 40 % above it up to 270 Hz, cross dipole 15 % above it or 240 Hz, the larger, up
 * to 320 Hz, and long dipole 330–450 Hz: common practice, no source. They are those of a classical guitar and are used
 * for every kind of instrument, whose kind is not asked. With the hole covered there is no main air.
 */
public final class ModeNaming {

    private static final double CLEAR_DB = 6;
    private static final double FAINTEST_NAMED_DB = -35;

    private final List<Resonance> resonances;
    private final Map<ModeName, Integer> chosen = new EnumMap<>(ModeName.class);
    private final String[] reasons;

    private ModeNaming(List<Resonance> resonances, HoleState hole) {
        this.resonances = resonances;
        this.reasons = new String[resonances.size()];
        if (hole != HoleState.COVERED) {
            choose(ModeName.MAIN_AIR, 85, 125);
        }
        choose(ModeName.MAIN_TOP, 150, 250);
        Integer top = chosen.get(ModeName.MAIN_TOP);
        if (top != null) {
            double topHz = resonances.get(top).frequencyHz().value();
            choose(ModeName.MAIN_BACK, 1.03 * topHz, Math.min(270, 1.4 * topHz));
            choose(ModeName.CROSS_DIPOLE, Math.max(240, 1.15 * topHz), 320);
            choose(ModeName.LONG_DIPOLE, 330, 450);
        }
    }

    /**
     * Names resonances.
     *
     * @param resonances lowest first
     * @param hole whether the soundhole was covered; one nobody wrote down is taken as open
     * @return the same resonances, in order, with suggested names and reasons
     */
    public static List<NamedResonance> suggest(List<Resonance> resonances, HoleState hole) {
        ModeNaming naming = new ModeNaming(resonances, hole);
        List<NamedResonance> named = new ArrayList<>();
        for (int i = 0; i < resonances.size(); i++) {
            String reason = naming.reasons[i] == null ? "no rule names it" : naming.reasons[i];
            named.add(new NamedResonance(resonances.get(i), naming.nameOf(i), reason));
        }
        return named;
    }

    private Optional<ModeName> nameOf(int index) {
        return chosen.entrySet().stream()
                .filter(e -> e.getValue() == index)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    private void choose(ModeName name, double lowHz, double highHz) {
        List<Integer> inRange = new ArrayList<>();
        for (int i = 0; i < resonances.size(); i++) {
            double hz = resonances.get(i).frequencyHz().value();
            if (hz >= lowHz && hz <= highHz && levelDb(i) > FAINTEST_NAMED_DB && !chosen.containsValue(i)) {
                inRange.add(i);
            }
        }
        inRange.sort((a, b) -> Double.compare(levelDb(b), levelDb(a)));
        if (inRange.isEmpty()) {
            return;
        }
        int strongest = inRange.get(0);
        if (inRange.size() > 1 && levelDb(strongest) - levelDb(inRange.get(1)) < CLEAR_DB) {
            resolveRivals(name, inRange, lowHz, highHz);
            return;
        }
        take(name, strongest, "strongest", lowHz, highHz);
    }

    /** Two of like strength: top and back may be told by order; anything else stays unnamed. */
    private void resolveRivals(ModeName name, List<Integer> rivals, double lowHz, double highHz) {
        boolean pair = rivals.size() == 2 || levelDb(rivals.get(0)) - levelDb(rivals.get(2)) >= CLEAR_DB;
        int lower = Math.min(rivals.get(0), rivals.get(1));
        if (name == ModeName.MAIN_TOP && pair && lower == rivals.get(0)) {
            take(name, lower, "the lower and stronger of two of like strength", lowHz, highHz);
            return;
        }
        for (int i : rivals.subList(0, 2)) {
            reasons[i] = String.format(
                    Locale.ROOT,
                    "may be %s, but two resonances of like strength lie in %.0f to %.0f Hz",
                    name.words(),
                    lowHz,
                    highHz);
        }
    }

    private void take(ModeName name, int index, String why, double lowHz, double highHz) {
        chosen.put(name, index);
        reasons[index] = String.format(
                Locale.ROOT, "%s between %.0f and %.0f Hz, where %s is usual", why, lowHz, highHz, name.words());
    }

    private double levelDb(int index) {
        return resonances.get(index).levelDb().value();
    }
}
