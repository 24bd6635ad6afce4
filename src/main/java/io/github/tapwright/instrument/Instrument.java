package io.github.tapwright.instrument;

import java.util.Optional;

/**
 * One instrument on the shelf.
 *
 * @param shopNumber the number by which the workshop knows it; no two instruments of an archive share one
 * @param kind what sort of guitar it is
 * @param body its measures
 * @param construction how its top is made
 * @param nickname what the workshop calls it; empty if it has no other name
 * @param notes anything else; empty if there is nothing
 */
public record Instrument(
        ShopNumber shopNumber,
        InstrumentKind kind,
        Body body,
        Construction construction,
        Optional<String> nickname,
        Optional<String> notes) {

    /** Takes blanks off the texts. */
    public Instrument {
        nickname = Entry.line("the nickname", nickname);
        notes = Entry.note("the notes", notes);
    }

    /**
     * An instrument of which nothing but number and kind is known.
     *
     * @param shopNumber the number by which the workshop knows it
     * @param kind what sort of guitar it is
     * @return the instrument, everything else unknown
     */
    public static Instrument of(ShopNumber shopNumber, InstrumentKind kind) {
        return new Instrument(shopNumber, kind, Body.UNKNOWN, Construction.UNKNOWN, Optional.empty(), Optional.empty());
    }

    /**
     * The same instrument under another number.
     *
     * @param number the number it should have had
     * @return all else as it is
     */
    public Instrument renumbered(ShopNumber number) {
        return new Instrument(number, kind, body, construction, nickname, notes);
    }
}
