package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SetUpSpread;
import java.util.EnumMap;
import java.util.Map;

/**
 * How far playing the same instrument again moves what is compared over all strings.
 *
 * @param otherwise what holds where no study of playing again says more
 * @param studied what a study says, on the scale of comparison: of the logarithm of decay times, of levels dB or LU
 */
public record PlayingSpread(SetUpSpread otherwise, Map<PlayedQuantity, KnownScatter> studied) {

    /** Keeps a copy of the map. */
    public PlayingSpread {
        studied = Map.copyOf(studied);
    }

    /**
     * What is said, or assumed, where nothing was studied.
     *
     * @param spread its figure for Q is taken for decay times
     * @return the same for every quantity of a kind
     */
    public static PlayingSpread of(SetUpSpread spread) {
        return new PlayingSpread(spread, Map.of());
    }

    /**
     * How far one quantity scatters.
     *
     * @param quantity which
     * @return on the scale of comparison; for a few per cent the share is the spread of the logarithm
     */
    public KnownScatter of(PlayedQuantity quantity) {
        KnownScatter known = studied.get(quantity);
        return known == null ? otherwise.known(quantity.kind()) : known;
    }

    /**
     * What playing again moves, as people read it, each basis for itself.
     *
     * @param procedure notes or plucks, one of {@link io.github.tapwright.sitting.Procedure#PLAYED}
     * @return such as "levels by 0.4 dB and loudness by 0.5 LU (measured on this bench)"
     */
    public String words(String procedure) {
        Map<PlayedQuantity, KnownScatter> known = new EnumMap<>(PlayedQuantity.class);
        PlayingStudy.quantities(procedure).forEach(q -> known.put(q, of(q)));
        return AgainWords.of(known);
    }
}
