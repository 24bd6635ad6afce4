package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;

/** Puts a new instrument on the shelf. */
public final class AddInstrument {

    private final InstrumentStore instruments;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     */
    public AddInstrument(InstrumentStore instruments) {
        this.instruments = instruments;
    }

    /**
     * Puts an instrument on the shelf.
     *
     * @param instrument the instrument
     * @throws io.github.tapwright.instrument.RefusedEntryException if its shop number is taken
     */
    public void add(Instrument instrument) {
        instruments.add(instrument);
    }
}
