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
    default void add(List<SittingId> sittings, Instant keptAt) {
        addAll(List.of(sittings), keptAt);
    }

    /**
     * Keeps several studies at once, all or none of them.
     *
     * @param studies each as in {@link #add}; of one kind the last holds
     * @param keptAt when
     */
    void addAll(List<List<SittingId>> studies, Instant keptAt);

    /**
     * The study of one kind of sittings that holds.
     *
     * @param procedure what its sittings were made for, a {@link Procedure#key()}
     * @return the sittings of the latest one; empty if there is none since one was kept that rests on none
     */
    Optional<List<SittingId>> latest(String procedure);
}
