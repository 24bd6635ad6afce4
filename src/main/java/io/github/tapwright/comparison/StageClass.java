package io.github.tapwright.comparison;

import io.github.tapwright.instrument.Keyed;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.sitting.Conditions;
import java.util.Optional;

/** Whether an instrument had been strung: bridge and strings make another body of it. */
public enum StageClass implements Keyed {
    /** At the stages strung and later. */
    STRUNG("strung", "strung"),
    /** In the white, before finish or finished. */
    UNSTRUNG("unstrung", "not yet strung");

    private final String key;
    private final String words;

    StageClass(String key, String words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * The class of a stage.
     *
     * @param stage any
     * @return whether it is strung
     */
    public static StageClass of(Stage stage) {
        return stage == Stage.STRUNG || stage == Stage.LATER ? STRUNG : UNSTRUNG;
    }

    /**
     * Why a sitting of taps is not one of this class; strings must be damped in one class and off in the other.
     *
     * @param conditions of the sitting
     * @return the reason; empty if it is one
     */
    public Optional<String> objection(Conditions conditions) {
        Optional<StageClass> own = conditions.stage().map(StageClass::of);
        if (own.isEmpty()) {
            return Optional.of("its stage is unknown; write it down with sitting edit");
        }
        if (own.get() != this) {
            return Optional.of("it was " + own.get().words + ", asked for is " + words);
        }
        StringState wrong = this == STRUNG ? StringState.OFF : StringState.DAMPED;
        return conditions.strings().state().equals(Optional.of(wrong))
                ? Optional.of(wrong.words() + ", unlike the others that are " + words)
                : Optional.empty();
    }
}
