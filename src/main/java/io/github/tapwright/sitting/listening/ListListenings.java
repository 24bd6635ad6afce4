package io.github.tapwright.sitting.listening;

import java.util.List;

/** Lists blind listenings. */
public final class ListListenings {

    private final ListeningStore listenings;

    /**
     * Joins the use case with what it needs.
     *
     * @param listenings where listenings are kept
     */
    public ListListenings(ListeningStore listenings) {
        this.listenings = listenings;
    }

    /**
     * Every listening.
     *
     * @return oldest first
     */
    public List<ListeningSession> all() {
        return listenings.all();
    }
}
