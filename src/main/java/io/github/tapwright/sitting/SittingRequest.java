package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the maker asks to be added as a sitting.
 *
 * @param instrument whose sitting it is
 * @param takenAt when the recordings were made; empty means now
 * @param conditions what was written down
 * @param files the recordings, analysed as one set in the order given; at least one
 * @param procedure what the recordings were made for, and what to look for
 */
public record SittingRequest(
        ShopNumber instrument, Optional<Moment> takenAt, Conditions conditions, List<Path> files, Procedure procedure) {

    /** Keeps a copy of the list and refuses a sitting without recordings. */
    public SittingRequest {
        files = List.copyOf(files);
        if (files.isEmpty()) {
            throw new RefusedEntryException("a sitting needs a recording; give one sound file or more");
        }
    }
}
