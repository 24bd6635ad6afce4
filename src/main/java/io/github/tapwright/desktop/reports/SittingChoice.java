package io.github.tapwright.desktop.reports;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;

/**
 * A sitting one can choose.
 *
 * @param id which
 * @param instrument whose
 * @param procedure what it is for; it can be set against another that is for the same
 * @param words how it reads
 */
public record SittingChoice(SittingId id, ShopNumber instrument, String procedure, String words) {}
