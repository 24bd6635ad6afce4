package io.github.tapwright.sitting;

import io.github.tapwright.instrument.ShopNumber;
import java.util.List;
import java.util.Optional;

/** Lists sittings on one line each. */
public final class ListSittings {

    private final InstrumentStore instruments;
    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     * @param sittings where sittings are kept
     */
    public ListSittings(InstrumentStore instruments, SittingStore sittings) {
        this.instruments = instruments;
        this.sittings = sittings;
    }

    /**
     * The sittings of every instrument.
     *
     * @return oldest first
     */
    public List<SittingSummary> all() {
        return sittings.list(Optional.empty());
    }

    /**
     * Every sitting that may be used for more than to be looked at.
     *
     * @return oldest first, without those set aside
     */
    public List<SittingSummary> inUse() {
        return all().stream().filter(s -> s.setAside().isEmpty()).toList();
    }

    /**
     * The sittings of one instrument.
     *
     * @param shopNumber which instrument
     * @return oldest first
     * @throws io.github.tapwright.instrument.RefusedEntryException if there is no such instrument
     */
    public List<SittingSummary> of(ShopNumber shopNumber) {
        if (instruments.find(shopNumber).isEmpty()) {
            throw ShowInstrument.notOnTheShelf(instruments, shopNumber);
        }
        return sittings.list(Optional.of(shopNumber));
    }
}
