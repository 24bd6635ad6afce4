package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import java.util.Optional;

/** How one partial dies away. All times are for 60 dB: ln(1000)/σ with σ the decay rate of the amplitude. */
public sealed interface PartialDecay {

    /**
     * The 60 dB time of the fast stage, or of the only one.
     *
     * @return empty if the decay was refused or its stages cannot be told apart
     */
    default Optional<Estimate> early() {
        return Optional.empty();
    }

    /**
     * The 60 dB time of the slow stage.
     *
     * @return empty unless there are two
     */
    default Optional<Estimate> late() {
        return Optional.empty();
    }

    /**
     * The time until the whole partial has fallen by 60 dB, whatever its stages.
     *
     * @return empty if the decay was refused
     */
    Optional<Estimate> whole();

    /**
     * Why less is known than could be.
     *
     * @return one line for the maker; empty if nothing is missing
     */
    default Optional<String> reservation() {
        return Optional.empty();
    }

    /**
     * One exponential explains the partial.
     *
     * @param decayTimeSeconds time for 60 dB
     */
    record OneStage(Estimate decayTimeSeconds) implements PartialDecay {

        @Override
        public Optional<Estimate> whole() {
            return Optional.of(decayTimeSeconds);
        }

        @Override
        public Optional<Estimate> early() {
            return Optional.of(decayTimeSeconds);
        }
    }

    /**
     * Two exponentials are needed: the string swings in two planes which the bridge damps and tunes differently.
     * Source: [Weinreich1977] for the piano, [Woodhouse2021] for plucked strings.
     *
     * @param earlyDecayTimeSeconds 60 dB time of the faster one
     * @param lateDecayTimeSeconds 60 dB time of the slower one
     * @param lateLevelDb level of the slower one re the faster one just after the pluck, dB
     * @param decayTimeSeconds time until both together have fallen by 60 dB since the pluck, beats averaged out
     * @param beatHz frequency of the slower less that of the faster one; its absolute value is the beat's
     * @param beats whether at least one beat can be seen while neither of the two is 20 dB below the other
     */
    record TwoStage(
            Estimate earlyDecayTimeSeconds,
            Estimate lateDecayTimeSeconds,
            Estimate lateLevelDb,
            Estimate decayTimeSeconds,
            Estimate beatHz,
            boolean beats)
            implements PartialDecay {

        /**
         * Whether the two die away at different paces, and do not just beat.
         *
         * @return false if the two times agree within the 95 % interval of their difference
         */
        public boolean stagesDiffer() {
            double u =
                    Math.hypot(earlyDecayTimeSeconds.standardUncertainty(), lateDecayTimeSeconds.standardUncertainty());
            double freedom =
                    Math.min(earlyDecayTimeSeconds.degreesOfFreedom(), lateDecayTimeSeconds.degreesOfFreedom());
            return new Estimate(lateDecayTimeSeconds.value() - earlyDecayTimeSeconds.value(), u, freedom)
                    .differsFromZero();
        }

        @Override
        public Optional<Estimate> whole() {
            return Optional.of(decayTimeSeconds);
        }

        @Override
        public Optional<Estimate> early() {
            return Optional.of(earlyDecayTimeSeconds);
        }

        @Override
        public Optional<Estimate> late() {
            return Optional.of(lateDecayTimeSeconds);
        }
    }

    /**
     * Two exponentials are needed, and only what both make together is known.
     *
     * @param decayTimeSeconds time until both together have fallen by 60 dB since the pluck, beats averaged out
     * @param reason why they cannot be told apart, one line for the maker
     */
    record Blended(Estimate decayTimeSeconds, String reason) implements PartialDecay {

        @Override
        public Optional<Estimate> whole() {
            return Optional.of(decayTimeSeconds);
        }

        @Override
        public Optional<String> reservation() {
            return Optional.of(reason);
        }
    }

    /**
     * The recording does not carry the decay.
     *
     * @param reason one line for the maker
     */
    record Refused(String reason) implements PartialDecay {

        @Override
        public Optional<Estimate> whole() {
            return Optional.empty();
        }

        @Override
        public Optional<String> reservation() {
            return Optional.of(reason);
        }
    }
}
