package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import java.util.List;

/** Looks along the shelf. */
public final class ListInstruments {

    private final InstrumentStore instruments;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     */
    public ListInstruments(InstrumentStore instruments) {
        this.instruments = instruments;
    }

    /**
     * Every instrument.
     *
     * @return by shop number
     */
    public List<Instrument> list() {
        return instruments.all();
    }

    /**
     * The shop number of every instrument.
     *
     * @return in their order
     */
    public List<ShopNumber> shopNumbers() {
        return list().stream().map(Instrument::shopNumber).toList();
    }

    /**
     * Every instrument with what its sittings last said about it.
     *
     * @return by shop number
     */
    public List<ShelfPlace> shelf() {
        return instruments.shelf();
    }
}
