package io.github.tapwright.mode.body;

import java.util.List;

/** What a change would do to the resonances with the hole open. */
public sealed interface Prediction {

    /**
     * The resonances afterwards.
     *
     * @param resonances lowest first, as many as were measured
     */
    record Foreseen(List<Moved> resonances) implements Prediction {

        /** Keeps a copy of the list. */
        public Foreseen {
            resonances = List.copyOf(resonances);
        }
    }

    /**
     * One resonance. The shift is known far better than the place, because the errors of setting up drop out of it.
     *
     * @param beforeHz as measured
     * @param afterHz afterwards
     * @param shiftHz afterwards less before
     */
    record Moved(double beforeHz, Answer.Inferred afterHz, Answer.Inferred shiftHz) {}

    /**
     * It cannot be foreseen.
     *
     * @param why with what to do
     */
    record Refused(String why) implements Prediction {}
}
