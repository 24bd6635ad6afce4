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
 * @param remarks what is known about how the recordings came about and cannot be seen in the files, such as lost
 *     sound; kept with the first of them
 */
public record SittingRequest(
        ShopNumber instrument,
        Optional<Moment> takenAt,
        Conditions conditions,
        List<Path> files,
        Procedure procedure,
        List<String> remarks) {

    /** Keeps copies of the lists and refuses a sitting without recordings. */
    public SittingRequest {
        files = List.copyOf(files);
        remarks = List.copyOf(remarks);
        if (files.isEmpty()) {
            throw new RefusedEntryException("a sitting needs a recording; give one sound file or more");
        }
    }

    /**
     * A request for files of which nothing else is known.
     *
     * @param instrument whose sitting it is
     * @param takenAt when the recordings were made; empty means now
     * @param conditions what was written down
     * @param files the recordings, analysed as one set in the order given; at least one
     * @param procedure what the recordings were made for, and what to look for
     */
    public SittingRequest(
            ShopNumber instrument,
            Optional<Moment> takenAt,
            Conditions conditions,
            List<Path> files,
            Procedure procedure) {
        this(instrument, takenAt, conditions, files, procedure, List.of());
    }

    /**
     * This request with remarks.
     *
     * @param known what cannot be seen in the files
     * @return changed request
     */
    public SittingRequest withRemarks(List<String> known) {
        return new SittingRequest(instrument, takenAt, conditions, files, procedure, known);
    }
}
