package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.mode.ModeName;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a decay time has to overcome, and that it makes nothing else harder to find. */
class SubjectsAtOnceTest {

    private record Answer(Subject subject, OptionalDouble probability) {

        static Answer of(ModeName mode, Quantity quantity, double probability) {
            return new Answer(new Subject(Optional.of(mode), quantity), OptionalDouble.of(probability));
        }

        Answer adjusted(double larger) {
            return new Answer(subject, OptionalDouble.of(larger));
        }
    }

    private static SubjectsAtOnce<Answer> asked(Answer... answers) {
        return new SubjectsAtOnce<>(List.of(answers), Answer::subject, Answer::probability);
    }

    private static List<Double> adjusted(SubjectsAtOnce<Answer> asked) {
        return asked.adjusted(Answer::adjusted).stream()
                .map(a -> a.probability().orElse(-1))
                .toList();
    }

    @Test
    void aDecayTimeIsNoQuestionOfItsOwn() {
        SubjectsAtOnce<Answer> asked = asked(
                Answer.of(ModeName.MAIN_TOP, Quantity.FREQUENCY, 0.01),
                Answer.of(ModeName.MAIN_TOP, Quantity.Q, 0.04),
                Answer.of(ModeName.MAIN_TOP, Quantity.DECAY_TIME, 0.03));

        assertThat(asked.count()).isEqualTo(2);
        assertThat(adjusted(asked))
                .as("two questions: 2 times 0.01, 0.04, and the decay is no surer than its Q")
                .containsExactly(0.02, 0.04, 0.04);
    }

    @Test
    void aDecayTimeThatIsLessSureThanItsQStaysSo() {
        assertThat(adjusted(asked(
                        Answer.of(ModeName.MAIN_TOP, Quantity.Q, 0.04),
                        Answer.of(ModeName.MAIN_TOP, Quantity.DECAY_TIME, 0.06))))
                .containsExactly(0.04, 0.06);
    }

    @Test
    void withoutItsQADecayTimeAsksForItself() {
        SubjectsAtOnce<Answer> asked = asked(
                Answer.of(ModeName.MAIN_AIR, Quantity.Q, 0.04),
                new Answer(new Subject(Optional.of(ModeName.MAIN_TOP), Quantity.Q), OptionalDouble.empty()),
                Answer.of(ModeName.MAIN_TOP, Quantity.DECAY_TIME, 0.03));

        assertThat(asked.count()).isEqualTo(2);
        assertThat(adjusted(asked)).containsExactly(0.06, -1.0, 0.06);
    }
}
