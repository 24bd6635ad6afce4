package io.github.tapwright.instrument;

import java.util.Optional;

/**
 * The number by which a workshop knows an instrument, as it is written on the label: "117", "C-2031".
 *
 * @param text one line of 1 to 40 characters, kept exactly as written but for surrounding blanks
 */
public record ShopNumber(String text) {

    private static final int LONGEST = 40;

    /** Refuses numbers that are blank, too long or not on one line. */
    public ShopNumber {
        text = Entry.line("the shop number", Optional.of(text))
                .filter(t -> t.length() <= LONGEST)
                .orElseThrow(() -> new RefusedEntryException(
                        "a shop number needs 1 to " + LONGEST + " characters; enter the number on the label"));
    }

    /**
     * Whether a label could be read as either: two numbers such as 58a and 58A.
     *
     * @param other another number
     * @return true if they differ, but only in small and capital letters
     */
    public boolean differsOnlyInCase(ShopNumber other) {
        return !equals(other) && text.equalsIgnoreCase(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
