package io.github.tapwright.sitting.listening;

import java.time.Instant;

/**
 * One answer.
 *
 * @param number which trial of its session, from 0
 * @param trial what was asked
 * @param saidA whether the listener said that X is A, or else B
 * @param playCount how many times a sound was played before the answer
 * @param answeredAt when
 */
public record ListeningAnswer(int number, ListeningTrial trial, boolean saidA, int playCount, Instant answeredAt) {

    /**
     * Whether the answer is right.
     *
     * @return true if X was what the listener said
     */
    public boolean right() {
        return saidA == trial.xIsA();
    }
}
