package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;
import java.time.Instant;

/**
 * A shop number an instrument had before it was renumbered.
 *
 * @param shopNumber the number
 * @param until when it was renumbered
 */
public record FormerNumber(ShopNumber shopNumber, Instant until) {}
