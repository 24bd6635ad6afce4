package io.github.tapwright.report;

import java.util.List;
import java.util.Optional;

/**
 * What the workshop says of itself, ready for the page.
 *
 * @param name its name; empty if it gives none
 * @param address lines
 * @param picture its picture; empty if it has none
 */
record ShopHead(Optional<String> name, List<String> address, Optional<Emblem> picture) {

    ShopHead {
        address = List.copyOf(address);
    }
}
