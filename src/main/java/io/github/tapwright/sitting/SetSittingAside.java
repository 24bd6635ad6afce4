package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import java.time.Clock;

/**
 * Sets a sitting aside that should not have been kept, and takes it back.
 *
 * <p>A sitting set aside is kept, listed and shown as what it is. Nothing beyond itself uses it: whoever names it in a question
 * is refused, and where it would have come along of itself it is left out, which the answer says.
 */
public final class SetSittingAside {

    private final SittingStore sittings;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param clock what tells the time
     */
    public SetSittingAside(SittingStore sittings, Clock clock) {
        this.sittings = sittings;
        this.clock = clock;
    }

    /**
     * Sets a sitting aside; of several reasons the one given last holds.
     *
     * @param id which sitting
     * @param reason why, on one line
     * @return the sitting as it is kept now
     * @throws RefusedEntryException if there is no such sitting or no reason
     */
    public Sitting setAside(SittingId id, String reason) {
        sittings.setAside(id, new OutOfUse(reason, clock.instant()));
        return new ShowSitting(sittings).show(id);
    }

    /**
     * Takes a sitting back into use.
     *
     * @param id which sitting
     * @return the sitting as it is kept now
     * @throws RefusedEntryException if there is no such sitting, or it is not set aside
     */
    public Sitting takeBack(SittingId id) {
        ShowSitting show = new ShowSitting(sittings);
        if (show.show(id).setAside().isEmpty()) {
            throw new RefusedEntryException("sitting " + id + " is not set aside, so there is nothing to take back");
        }
        sittings.takeBack(id, clock.instant());
        return show.show(id);
    }
}
