package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.Strings;
import java.util.Optional;

/**
 * An instrument on the shelf, with what its sittings last said about it.
 *
 * @param instrument which
 * @param sittings how many it has in use
 * @param setAside how many besides are set aside
 * @param last its last sitting in use, of any kind; empty if it has none
 */
public record ShelfPlace(Instrument instrument, int sittings, int setAside, Optional<LastSitting> last) {

    /**
     * A sitting on the shelf's line.
     *
     * @param id its number
     * @param takenAt when the recordings were made
     * @param stage how far the instrument had come; empty if unknown
     * @param strings what the strings were and did
     */
    public record LastSitting(SittingId id, Moment takenAt, Optional<Stage> stage, Strings strings) {}
}
