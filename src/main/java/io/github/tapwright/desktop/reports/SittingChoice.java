package io.github.tapwright.desktop.reports;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;

/**
 * A sitting one can choose.
 *
 * @param id which
 * @param instrument whose
 * @param taps whether it is of taps, and can be set against another
 * @param words how it reads
 */
public record SittingChoice(SittingId id, ShopNumber instrument, boolean taps, String words) {}
