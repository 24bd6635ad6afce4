package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.RefusedEntryException;
import java.util.List;
import java.util.Optional;

/**
 * What a workshop says of itself on what it hands on.
 *
 * @param name its name; empty if it gives none
 * @param address lines of its address and whatever else belongs there, {@value #MOST_LINES} at most
 * @param picture its picture; empty if it has none
 */
public record ShopProfile(Optional<String> name, List<String> address, Optional<ShopPicture> picture) {

    /** More would push the report off its own first page. */
    public static final int MOST_LINES = 6;

    /** Nothing said yet. */
    public static final ShopProfile UNKNOWN = new ShopProfile(Optional.empty(), List.of(), Optional.empty());

    /** Takes blanks off the texts and leaves blank lines out. */
    public ShopProfile {
        name = Entry.line("the shop's name", name);
        address = address.stream()
                .flatMap(line -> Entry.line("a line of the shop's address", Optional.of(line)).stream())
                .toList();
        if (address.size() > MOST_LINES) {
            throw new RefusedEntryException("the shop's address may have " + MOST_LINES + " lines at most, has "
                    + address.size() + "; put two of them into one");
        }
    }
}
