package io.github.tapwright.sitting;

import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.RefusedEntryException;
import java.time.Instant;
import java.util.Optional;

/**
 * Why something that is kept is used no longer; nothing of it is deleted.
 *
 * @param reason the maker's, on one line
 * @param since when the maker said so
 */
public record OutOfUse(String reason, Instant since) {

    /** Refuses to take anything out of use without a reason. */
    public OutOfUse {
        reason = requireReason(reason);
    }

    /**
     * A reason as it is kept.
     *
     * @param typed the maker's
     * @return on one line
     * @throws RefusedEntryException if there is none
     */
    public static String requireReason(String typed) {
        return Entry.line("the reason", Optional.of(typed))
                .orElseThrow(() -> new RefusedEntryException("there is no reason; say in a few words what is wrong"));
    }
}
