package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import java.util.Optional;

/**
 * What the maker wants to record.
 *
 * @param instrument whose sitting it will be
 * @param procedure what it is for
 * @param conditions what is known so far; more can be said when it is kept
 * @param device an {@link InputDevice#name()}; empty for the system's choice
 * @param format how to record
 */
public record LiveRequest(
        ShopNumber instrument,
        Procedure procedure,
        Conditions conditions,
        Optional<String> device,
        LiveFormat format) {}
