package io.github.tapwright.comparison;

import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.ResonanceMatching;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How far setting up again moves figures on this bench, from sittings of one instrument taken down and put up again in between.
 *
 * <p>Each resonance found in every set-up has its own scatter; over all of them the root of the mean square, relative for frequencies
 * and Q, is the bench's; of levels without the resonance that serves as 0 dB. The resonances of one set-up move together, so the
 * bench's figures have no more than p − 1 degrees of freedom however many resonances there are.
 *
 * @param sittings what it rests on, at least {@value #FEWEST}
 * @param resonances those found in every set-up, lowest first
 * @param spread what it gives for comparisons; empty if no resonance was found in all of them
 */
public record BenchStudy(
        List<SittingOutline> sittings, List<StudiedResonance> resonances, Optional<SetUpSpread> spread) {

    /** Fewer set-ups say next to nothing about scatter. */
    public static final int FEWEST = 3;

    /** So many make a study worth its name. */
    public static final int ENOUGH = 5;

    /** What is to be said where levels were not studied. */
    public static final String LEVEL_ASSUMED =
            "The level is assumed, not measured: one resonance alone is its own 0 dB.";

    private static final double MOST_FREQUENCY_SHARE = 0.1;
    private static final double MOST_LEVEL_DB = 20;

    /** Keeps copies of the lists. */
    public BenchStudy {
        sittings = List.copyOf(sittings);
        resonances = List.copyOf(resonances);
    }

    static BenchStudy of(List<SittingOutline> sittings) {
        Map<ShownResonance, List<Resonance>> found = new LinkedHashMap<>();
        for (ShownResonance shown : sittings.get(0).resonances()) {
            List<Resonance> inAll = everywhere(shown, sittings);
            if (inAll.size() == sittings.size()) {
                found.put(shown, inAll);
            }
        }
        List<StudiedResonance> studied = studied(found);
        Optional<SetUpSpread> spread =
                studied.isEmpty() ? Optional.empty() : Optional.of(spread(studied, sittings.size() - 1));
        return new BenchStudy(sittings, studied, spread);
    }

    private static List<StudiedResonance> studied(Map<ShownResonance, List<Resonance>> found) {
        return LevelReference.strongest(found.values(), inAll -> inAll.get(0)).stream()
                .flatMap(serving -> found.entrySet().stream()
                        .map(e -> StudiedResonance.of(e.getKey().name(), e.getValue(), serving)))
                .toList();
    }

    private static List<Resonance> everywhere(ShownResonance wanted, List<SittingOutline> sittings) {
        List<Resonance> found = new ArrayList<>();
        found.add(wanted.found().resonance());
        SittingOutline first = sittings.get(0);
        for (SittingOutline other : sittings.subList(1, sittings.size())) {
            ResonanceMatching.match(named(first), named(other)).stream()
                    .filter(p -> p.first().resonance().equals(wanted.found().resonance()))
                    .map(p -> p.second().resonance())
                    .forEach(found::add);
        }
        return found;
    }

    private static List<NamedResonance> named(SittingOutline sitting) {
        return sitting.resonances().stream()
                .map(s -> new NamedResonance(s.found().resonance(), s.mode(), s.reason()))
                .toList();
    }

    private static SetUpSpread spread(List<StudiedResonance> studied, int freedom) {
        return new SetUpSpread(
                known(Math.min(MOST_FREQUENCY_SHARE, rms(studied, r -> share(r.frequencyHz()))), freedom),
                known(Math.min(1, rms(studied, r -> share(r.q()))), freedom),
                level(studied, freedom));
    }

    private static KnownScatter known(double deviation, int freedom) {
        return new KnownScatter(deviation, freedom, SetUpSpread.Basis.STUDIED);
    }

    /**
     * Whether levels were studied; the spread of levels is assumed if not.
     *
     * @return false where one resonance alone was found in every set-up, which is its own 0 dB
     */
    public boolean studiesLevels() {
        return spread.filter(s -> s.level().basis() == SetUpSpread.Basis.STUDIED)
                .isPresent();
    }

    /** One resonance alone is its own 0 dB and tells nothing of levels: the usual figure stands in, as an assumed one. */
    private static KnownScatter level(List<StudiedResonance> studied, int freedom) {
        double[] scatters = studied.stream()
                .flatMap(r -> r.levelDb().stream())
                .mapToDouble(StudiedResonance.SetUpScatter::betweenSetUps)
                .toArray();
        return scatters.length == 0
                ? SetUpSpread.USUAL.level()
                : known(Math.min(MOST_LEVEL_DB, rms(scatters)), freedom);
    }

    private static double share(StudiedResonance.SetUpScatter scatter) {
        return scatter.betweenSetUps() / scatter.mean();
    }

    private static double rms(List<StudiedResonance> studied, ToDoubleFunction<StudiedResonance> of) {
        return rms(studied.stream().mapToDouble(of).toArray());
    }

    private static double rms(double... scatters) {
        return Math.sqrt(Arrays.stream(scatters).map(x -> x * x).average().orElseThrow());
    }
}
