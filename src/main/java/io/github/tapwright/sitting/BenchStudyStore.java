package io.github.tapwright.sitting;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps which sittings a workshop's studies of its bench rest on; studies are only ever added. */
public interface BenchStudyStore {

    /**
     * Keeps a study.
     *
     * @param sittings what it rests on, existing sittings; none, so that from then on no study of any kind holds
     * @param keptAt when
     */
    void add(List<SittingId> sittings, Instant keptAt);

    /**
     * The study of one kind of sittings that holds.
     *
     * @param procedure what its sittings were made for, a {@link Procedure#key()}
     * @return the sittings of the latest one; empty if there is none since one was kept that rests on none
     */
    Optional<List<SittingId>> latest(String procedure);
}
