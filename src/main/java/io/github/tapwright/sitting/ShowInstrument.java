package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;

/** Takes an instrument from the shelf to look at it. */
public final class ShowInstrument {

    private final InstrumentStore instruments;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     */
    public ShowInstrument(InstrumentStore instruments) {
        this.instruments = instruments;
    }

    /**
     * One instrument.
     *
     * @param shopNumber which instrument
     * @return all that is known about it
     * @throws RefusedEntryException if there is no such instrument
     */
    public Instrument show(ShopNumber shopNumber) {
        return instruments.find(shopNumber).orElseThrow(() -> notOnTheShelf(shopNumber));
    }

    static RefusedEntryException notOnTheShelf(ShopNumber shopNumber) {
        return new RefusedEntryException("no instrument has the shop number " + shopNumber
                + "; add it first, or look the number up in the list");
    }
}
