package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
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
     * Changes an instrument; if its shop number was mistyped, that too, and all its sittings follow.
     *
     * @param shopNumber which instrument
     * @param change from what is known to what shall be known
     * @return the instrument as it is kept now
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such instrument, or its new number is taken
     */
    public Instrument edit(ShopNumber shopNumber, UnaryOperator<Instrument> change) {
        Instrument after = change.apply(new ShowInstrument(instruments).show(shopNumber));
        instruments.replace(shopNumber, after);
        return after;
    }
}
