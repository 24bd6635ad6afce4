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
     * @throws RefusedEntryException if its shop number is taken
     */
    void add(Instrument instrument);

    /**
     * Replaces what is known about an instrument; its shop number stays.
     *
     * @param instrument the instrument as it shall be
     * @throws RefusedEntryException if no instrument has its shop number
     */
    void replace(Instrument instrument);

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
