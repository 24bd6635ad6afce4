package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.util.List;
import java.util.stream.Collectors;

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
        return instruments.find(shopNumber).orElseThrow(() -> notOnTheShelf(instruments, shopNumber));
    }

    /**
     * The shop numbers an instrument had before it was renumbered.
     *
     * @param shopNumber the number it has now
     * @return oldest first; empty if it was never renumbered
     */
    public List<FormerNumber> formerNumbers(ShopNumber shopNumber) {
        return instruments.formerNumbers(shopNumber);
    }

    static RefusedEntryException notOnTheShelf(InstrumentStore instruments, ShopNumber shopNumber) {
        String meant = instruments.perhapsMeant(shopNumber).stream()
                .map(ShopNumber::text)
                .collect(Collectors.joining(" or "));
        return new RefusedEntryException("no instrument has the shop number " + shopNumber
                + (meant.isEmpty() ? "; " : "; perhaps you mean " + meant + ", else ")
                + "add it first, or look the number up in the list");
    }
}
