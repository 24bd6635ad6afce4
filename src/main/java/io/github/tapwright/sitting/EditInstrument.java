package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.util.function.UnaryOperator;

/** Changes what is known about an instrument. */
public final class EditInstrument {

    private final InstrumentStore instruments;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     */
    public EditInstrument(InstrumentStore instruments) {
        this.instruments = instruments;
    }

    /**
     * Changes an instrument; its shop number stays, because sittings and labels refer to it.
     *
     * @param shopNumber which instrument
     * @param change from what is known to what shall be known
     * @return the instrument as it is kept now
     * @throws RefusedEntryException if there is no such instrument, or the change touches the shop number
     */
    public Instrument edit(ShopNumber shopNumber, UnaryOperator<Instrument> change) {
        Instrument before = instruments.find(shopNumber).orElseThrow(() -> ShowInstrument.notOnTheShelf(shopNumber));
        Instrument after = change.apply(before);
        if (!after.shopNumber().equals(shopNumber)) {
            throw new RefusedEntryException("the shop number of " + shopNumber
                    + " cannot change; add a new instrument under the other number instead");
        }
        instruments.replace(after);
        return after;
    }
}
