package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.mode.ModeName;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SubjectTest {

    @Test
    void theLevelOfAResonanceIsNoQuestionAboutManySittings() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Subject(Optional.of(ModeName.MAIN_AIR), Quantity.LEVEL))
                .withMessage(
                        "each sitting's 0 dB is its own strongest resonance; levels of main air in many sittings cannot"
                                + " stand beside each other");
        assertThat(Subject.ofTaps())
                .hasSize(3 * ModeName.values().length)
                .noneMatch(s -> s.quantity() == Quantity.LEVEL);
    }
}
