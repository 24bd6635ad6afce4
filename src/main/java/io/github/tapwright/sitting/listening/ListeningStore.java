package io.github.tapwright.sitting.listening;

import java.util.List;
import java.util.Optional;

/** Keeps blind listenings: each answer is safe before the next question is asked, and none is ever changed. */
public interface ListeningStore {

    /**
     * Keeps a listening that begins.
     *
     * @param begun what was settled
     * @return its number
     */
    ListeningId begin(NewListening begun);

    /**
     * Keeps an answer.
     *
     * @param id of which listening
     * @param answer of a trial that has none yet
     */
    void add(ListeningId id, ListeningAnswer answer);

    /**
     * One listening.
     *
     * @param id which
     * @return empty if there is none
     */
    Optional<ListeningSession> find(ListeningId id);

    /**
     * Every listening.
     *
     * @return oldest first
     */
    List<ListeningSession> all();
}
