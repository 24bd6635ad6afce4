package io.github.tapwright.comparison.group;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import java.util.List;
import java.util.Optional;

/** Compares the groups of an archive. */
public final class CompareGroups {

    private final InstrumentStore instruments;
    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     * @param sittings where sittings are kept
     */
    public CompareGroups(InstrumentStore instruments, SittingStore sittings) {
        this.instruments = instruments;
        this.sittings = sittings;
    }

    /**
     * Compares.
     *
     * @param settings what is asked
     * @return what the archive says
     * @throws RefusedEntryException if there is no sitting at all
     */
    public GroupStudy compare(GroupSettings settings) {
        List<SittingOutline> all = sittings.outlines(Optional.empty());
        if (all.isEmpty()) {
            throw new RefusedEntryException("the archive has no sittings yet; add some with sitting add");
        }
        return GroupStudy.of(settings, instruments.all(), all, sittings.sharing());
    }
}
