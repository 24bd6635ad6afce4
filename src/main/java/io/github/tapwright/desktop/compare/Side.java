package io.github.tapwright.desktop.compare;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import java.util.Optional;

/**
 * One side of a comparison.
 *
 * @param instrument whose
 * @param sitting which sitting; empty for the latest one of taps, whichever that is
 * @param words how the choice reads
 */
public record Side(ShopNumber instrument, Optional<SittingId> sitting, String words) {

    /**
     * The latest taps of an instrument.
     *
     * @param instrument whose
     * @return a side
     */
    static Side latestOf(ShopNumber instrument) {
        return new Side(instrument, Optional.empty(), instrument + ", its latest taps");
    }

    boolean isSameAs(Side other) {
        return instrument.equals(other.instrument) && sitting.equals(other.sitting);
    }
}
