package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.util.List;
import java.util.Optional;

/** Keeps instruments. */
public interface InstrumentStore {

    /**
     * Keeps a new instrument.
     *
     * @param instrument the instrument
     * @throws RefusedEntryException if its shop number is taken, or differs from one that is only in small and capital letters
     */
    void add(Instrument instrument);

    /**
     * Replaces what is known about an instrument; what it replaces is kept. Its sittings follow it to another shop number.
     *
     * @param shopNumber the number it has until now
     * @param instrument the instrument as it shall be
     * @throws RefusedEntryException if no instrument has the first number, or another has, but for small and capital letters, the
     *     second
     */
    void replace(ShopNumber shopNumber, Instrument instrument);

    /**
     * The shop numbers an instrument had before it was renumbered.
     *
     * @param shopNumber the number it has now
     * @return oldest first; empty if it was never renumbered
     */
    List<FormerNumber> formerNumbers(ShopNumber shopNumber);

    /**
     * The instruments somebody may mean by a number that none has.
     *
     * @param shopNumber a number no instrument has
     * @return those whose number differs only in small and capital letters, and those that had this number before
     */
    List<ShopNumber> perhapsMeant(ShopNumber shopNumber);

    /**
     * Finds an instrument.
     *
     * @param shopNumber its number
     * @return the instrument, or empty if no instrument has this number
     */
    Optional<Instrument> find(ShopNumber shopNumber);

    /**
     * Every instrument kept.
     *
     * @return by shop number
     */
    List<Instrument> all();

    /**
     * Every instrument with what its sittings last said about it.
     *
     * @return by shop number
     */
    List<ShelfPlace> shelf();
}
