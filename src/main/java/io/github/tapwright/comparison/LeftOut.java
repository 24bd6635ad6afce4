package io.github.tapwright.comparison;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;

/**
 * A sitting that was not used, and why.
 *
 * @param sitting its number
 * @param instrument whose it is
 * @param reason in words
 */
public record LeftOut(SittingId sitting, ShopNumber instrument, String reason) {

    /**
     * Leaves a sitting out.
     *
     * @param sitting which
     * @param reason in words
     * @return the entry of the list
     */
    public static LeftOut of(SittingOutline sitting, String reason) {
        return new LeftOut(sitting.id(), sitting.instrument(), reason);
    }
}
