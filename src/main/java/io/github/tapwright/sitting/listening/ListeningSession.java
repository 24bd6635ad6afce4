package io.github.tapwright.sitting.listening;

import java.util.List;

/**
 * A blind listening as the archive keeps it.
 *
 * @param id its number
 * @param setUp what was settled before
 * @param answers in the order of the trials
 */
public record ListeningSession(ListeningId id, NewListening setUp, List<ListeningAnswer> answers) {

    /** Keeps a copy of the list. */
    public ListeningSession {
        answers = List.copyOf(answers);
    }

    /**
     * Whether every question was answered.
     *
     * @return false if it can still go on
     */
    public boolean finished() {
        return answers.size() >= setUp.trialCount();
    }

    /**
     * How many answers are right.
     *
     * @return 0 or more
     */
    public int rightCount() {
        return (int) answers.stream().filter(ListeningAnswer::right).count();
    }
}
