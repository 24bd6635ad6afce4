package io.github.tapwright.sitting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps which sittings a workshop's study of its bench rests on; studies are only ever added. */
public interface BenchStudyStore {

    /**
     * Keeps a study.
     *
     * @param sittings what it rests on, existing sittings; none, so that from then on no study holds
     * @param keptAt when
     */
    void add(List<SittingId> sittings, Instant keptAt);

    /**
     * The study that holds.
     *
     * @return the sittings of the latest one; empty if there is none, or it rests on none
     */
    Optional<List<SittingId>> latest();
}
