package io.github.tapwright.comparison;

import io.github.tapwright.instrument.RefusedEntryException;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The study of one kind that was kept last, read once for all that is asked of it.
 *
 * @param study what it says now; empty if none is kept, or it no longer holds
 * @param lapse why it no longer holds: its sittings, corrected or analysed anew since, no longer go together or no longer tell anything; empty if
 *     it does, or none is kept
 * @param <S> the kind of study
 */
public record KeptStudy<S>(Optional<S> study, Optional<String> lapse) {

    /**
     * Evaluates the study.
     *
     * @param latest the study kept last; may refuse
     * @param <S> the kind of study
     * @return what it says, or why it no longer can
     */
    public static <S> KeptStudy<S> of(Supplier<Optional<S>> latest) {
        try {
            return new KeptStudy<>(latest.get(), Optional.empty());
        } catch (RefusedEntryException e) {
            return new KeptStudy<>(Optional.empty(), Optional.of(String.valueOf(e.getMessage())));
        }
    }

    /**
     * What is assumed where it says nothing.
     *
     * @return cautious figures, the basis of which says whether a study was kept
     */
    public SetUpSpread cautious() {
        return exists() ? SetUpSpread.LAPSED : SetUpSpread.USUAL;
    }

    /**
     * Whether one was kept, though it may no longer hold.
     *
     * @return false if there is none
     */
    public boolean exists() {
        return study.isPresent() || lapse.isPresent();
    }
}
