package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import java.util.List;
import java.util.Optional;

/** Shows a sitting with everything known about it. */
public final class ShowSitting {

    private final SittingStore sittings;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     */
    public ShowSitting(SittingStore sittings) {
        this.sittings = sittings;
    }

    /**
     * One sitting.
     *
     * @param id its number
     * @return the sitting with all its analyses and names
     * @throws RefusedEntryException if there is no such sitting
     */
    public Sitting show(SittingId id) {
        return sittings.find(id).orElseThrow(() -> noSuchSitting(id));
    }

    /**
     * Several sittings in outline.
     *
     * @param ids their numbers, each once
     * @return one for each, in the same order
     * @throws RefusedEntryException if one does not exist
     */
    public List<SittingOutline> outlines(List<SittingId> ids) {
        List<SittingOutline> found = sittings.outlines(ids);
        for (SittingId id : ids) {
            if (found.stream().noneMatch(s -> s.id().equals(id))) {
                throw noSuchSitting(id);
            }
        }
        return found;
    }

    /**
     * Whether there is such a sitting.
     *
     * @param id its number
     * @return false if there is none
     */
    public boolean knows(SittingId id) {
        return !sittings.outlines(List.of(id)).isEmpty();
    }

    /**
     * One sitting, for a question about more than itself.
     *
     * @param id its number
     * @return the sitting with all its analyses and names
     * @throws RefusedEntryException if there is no such sitting, or it is set aside
     */
    public Sitting use(SittingId id) {
        Sitting sitting = show(id);
        refuseSetAside(id, sitting.setAside());
        return sitting;
    }

    /**
     * Several sittings in outline, for a question about all of them.
     *
     * @param ids their numbers, each once
     * @return one for each, in the same order
     * @throws RefusedEntryException if one does not exist, or is set aside
     */
    public List<SittingOutline> useOutlines(List<SittingId> ids) {
        List<SittingOutline> found = outlines(ids);
        found.forEach(s -> refuseSetAside(s.id(), s.setAside()));
        return found;
    }

    private static void refuseSetAside(SittingId id, Optional<OutOfUse> setAside) {
        setAside.ifPresent(why -> {
            throw new RefusedEntryException("sitting " + id + " is set aside (" + why.reason()
                    + "); choose another, or take it back with sitting set-aside " + id + " --take-back");
        });
    }

    static RefusedEntryException noSuchSitting(SittingId id) {
        return new RefusedEntryException("there is no sitting " + id + "; look its number up in the list of sittings");
    }
}
