package io.github.tapwright.comparison.group;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.WelchDifference;
import io.github.tapwright.synthesis.Chance;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Five solid tops against five sandwiches, a thousand times over: what the intervals hold and how often nothing raises an alarm. */
class GroupStudyPropertyTest {

    private static final int STUDIES = 1000;
    private static final int IN_EACH = 5;
    private static final double EFFECT = 0.03;
    private static final Instant DAY = Instant.parse("2026-03-14T12:00:00Z");
    private static final Subject TOP = new Subject(Optional.of(ModeName.MAIN_TOP), Quantity.FREQUENCY);
    private static final Subject Q = new Subject(Optional.of(ModeName.MAIN_TOP), Quantity.Q);
    private static final GroupSettings BY_CONSTRUCTION = new GroupSettings(GroupBy.CONSTRUCTION, StageClass.STRUNG);

    private final Random chance = Chance.seeded(2026);

    private record Made(List<Instrument> shelf, List<Sitting> sittings) {}

    /** Instruments scatter by 3 % of frequency and 10 % of Q, sittings by 0.3 % and 4 %, humidity within 5 points, alike in both groups. */
    private Made study(double effect, int sittingsEach) {
        Made made = new Made(new ArrayList<>(), new ArrayList<>());
        for (int i = 0; i < 2 * IN_EACH; i++) {
            boolean sandwich = i >= IN_EACH;
            String number = Integer.toString(100 + i);
            made.shelf()
                    .add(instrument(number, sandwich ? ConstructionKind.HONEYCOMB_SANDWICH : ConstructionKind.SOLID));
            double top = 1 + (sandwich ? effect : 0) + 0.03 * chance.nextGaussian();
            double q = 1 + 0.1 * chance.nextGaussian();
            for (int s = 0; s < sittingsEach; s++) {
                double percent = 42.5 + 5 * chance.nextDouble();
                InventedBody body = new InventedBody(
                        1 + 0.003 * chance.nextGaussian(),
                        top * (1 + 0.003 * chance.nextGaussian() - 0.00225 * (percent - 45)),
                        1 + 0.003 * chance.nextGaussian(),
                        q * (1 + 0.04 * chance.nextGaussian()));
                made.sittings()
                        .add(body.sitting(
                                made.sittings().size() + 1,
                                number,
                                DAY,
                                InventedBody.conditions(Stage.STRUNG, percent)));
            }
        }
        return made;
    }

    static Instrument instrument(String number, ConstructionKind kind) {
        return new Instrument(
                new ShopNumber(number),
                InstrumentKind.CLASSICAL,
                Instrument.of(new ShopNumber(number), InstrumentKind.CLASSICAL).body(),
                new Construction(Optional.of(kind), Layer.UNKNOWN, Layer.UNKNOWN, Layer.UNKNOWN, Optional.empty()),
                Optional.empty(),
                Optional.empty());
    }

    private static Evidence evidence(GroupStudy study, Subject subject) {
        return study.differences().stream()
                .filter(d -> d.subject().equals(subject))
                .findFirst()
                .flatMap(GroupDifference::evidence)
                .orElseThrow();
    }

    private static GroupStudy compare(Made made) {
        return GroupStudy.of(
                BY_CONSTRUCTION,
                made.shelf(),
                made.sittings().stream().map(SittingOutline::of).toList(),
                List.of());
    }

    @Test
    void intervalsHoldTheTrueDifference() {
        int top = 0;
        int q = 0;
        for (int i = 0; i < STUDIES; i++) {
            GroupStudy study = compare(study(EFFECT, 1));
            top += evidence(study, TOP).interval95().contains(187 * EFFECT) ? 1 : 0;
            q += evidence(study, Q).interval95().contains(0) ? 1 : 0;
        }
        assertThat(top).isBetween(930, 970);
        assertThat(q).isBetween(930, 970);
    }

    @Test
    void withoutAnEffectOneQuestionInTwentyRaisesAnAlarmAndOneStudyInTwenty() {
        int single = 0;
        int dealtOut = 0;
        int studies = 0;
        for (int i = 0; i < STUDIES; i++) {
            GroupStudy study = compare(study(0, 1));
            single += evidence(study, TOP).probability() < 0.05 ? 1 : 0;
            dealtOut += evidence(study, TOP).permutation().probability() < 0.05 ? 1 : 0;
            studies += study.differences().stream()
                            .flatMap(d -> d.evidence().stream())
                            .anyMatch(Evidence::differs)
                    ? 1
                    : 0;
        }
        assertThat(single).isBetween(35, 65);
        assertThat(dealtOut).isBetween(35, 65);
        assertThat(studies).isLessThan(65);
    }

    /** One group in winter, the other in summer: what the assumed correction adds makes an answer less sure, never surer. */
    @Test
    void anAssumedCorrectionNeverMakesADifferenceSurer() {
        for (int i = 0; i < 100; i++) {
            Made winter = study(EFFECT, 1);
            Made damp = new Made(winter.shelf(), new ArrayList<>());
            for (Sitting s : winter.sittings()) {
                double percent = 42 + (s.id().number() > IN_EACH ? 12 * chance.nextDouble() : 0);
                damp.sittings()
                        .add(InventedBody.of(
                                s.id().number(),
                                s.instrument().text(),
                                DAY,
                                InventedBody.conditions(Stage.STRUNG, percent),
                                s.latest().findings()));
            }
            assertThat(compare(damp).differences().stream().flatMap(d -> d.evidence().stream()))
                    .isNotEmpty()
                    .allSatisfy(GroupStudyPropertyTest::isNoSurerThanByItself);
        }
    }

    private static void isNoSurerThanByItself(Evidence evidence) {
        Estimate alone = WelchDifference.of(evidence.first(), evidence.second());
        assertThat(evidence.interval95().width())
                .isGreaterThanOrEqualTo(alone.interval95().width());
        assertThat(evidence.probability()).isGreaterThanOrEqualTo(StudentProbability.twoSided(alone));
    }

    /** Fewer, because a mixed model takes its time; 100 studies at 95 % scatter by 2.2 points, three times which is allowed. */
    @Test
    void theMixedModelHoldsItTooAndSeesTheHumidity() {
        int holds = 0;
        int humidity = 0;
        int studies = 100;
        for (int i = 0; i < studies; i++) {
            MixedDifference mixed =
                    evidence(compare(study(EFFECT, 3)), TOP).mixed().orElseThrow();
            holds += Math.abs(mixed.difference().value() - 187 * EFFECT)
                            <= mixed.difference().halfWidth95()
                    ? 1
                    : 0;
            double truth = -0.00225 * 187;
            humidity += Math.abs(mixed.perPointOfHumidity().orElseThrow().value() - truth)
                            <= mixed.perPointOfHumidity().orElseThrow().halfWidth95()
                    ? 1
                    : 0;
        }
        assertThat(holds).isBetween(88, 100);
        assertThat(humidity).isBetween(88, 100);
    }
}
