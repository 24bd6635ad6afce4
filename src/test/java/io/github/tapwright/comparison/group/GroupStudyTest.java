package io.github.tapwright.comparison.group;

import static io.github.tapwright.comparison.group.GroupStudyPropertyTest.instrument;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.InventedResults;
import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GroupStudyTest {

    private static final Instant DAY = Instant.parse("2026-03-14T12:00:00Z");
    private static final Conditions STRUNG = InventedBody.conditions(Stage.STRUNG, 45);
    private static final Subject TOP = new Subject(Optional.of(ModeName.MAIN_TOP), Quantity.FREQUENCY);

    private final List<Instrument> shelf = new ArrayList<>();
    private final List<Sitting> sittings = new ArrayList<>();
    private List<List<SittingId>> sharing = List.of();

    private void add(String number, ConstructionKind kind, double... tops) {
        shelf.add(instrument(number, kind));
        for (double top : tops) {
            add(number, top, STRUNG);
        }
    }

    private void add(String number, double top, Conditions conditions) {
        sittings.add(new InventedBody(1, top, 1, 1).sitting(sittings.size() + 1, number, DAY, conditions));
    }

    private void addPlucks(String number, double db, Optional<CalibrationId> calibration) {
        List<Pluck> plucks = List.of(
                new Pluck(0, 1, Optional.of(1), Optional.of(db - 1), Optional.empty(), Optional.empty(), List.of()),
                new Pluck(0, 3, Optional.of(6), Optional.of(db + 1), Optional.empty(), Optional.empty(), List.of()));
        sittings.add(InventedBody.of(
                sittings.size() + 1,
                number,
                DAY,
                STRUNG,
                new Findings.OfPlucks(new PluckRun(plucks, Tuning.CLASSICAL, calibration, "invented-1"))));
    }

    private GroupStudy study() {
        return GroupStudy.of(
                new GroupSettings(GroupBy.CONSTRUCTION, StageClass.STRUNG),
                shelf,
                sittings.stream().map(SittingOutline::of).toList(),
                sharing);
    }

    private static GroupDifference find(GroupStudy study, Subject subject) {
        return study.differences().stream()
                .filter(d -> d.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private void threeAgainstFour() {
        add("1", ConstructionKind.SOLID, 0.99);
        add("2", ConstructionKind.SOLID, 1.00);
        add("3", ConstructionKind.SOLID, 1.01);
        add("4", ConstructionKind.HONEYCOMB_SANDWICH, 1.09);
        add("5", ConstructionKind.HONEYCOMB_SANDWICH, 1.10);
        add("6", ConstructionKind.HONEYCOMB_SANDWICH, 1.10);
        add("7", ConstructionKind.HONEYCOMB_SANDWICH, 1.11);
    }

    @Test
    void aLargeDifferenceIsSaidInWords() {
        threeAgainstFour();
        GroupStudy study = study();

        assertThat(study.questions())
                .as("frequency and Q of three; decay times are Q again")
                .isEqualTo(6);
        assertThat(GroupWords.sentence(find(study, TOP), study.questions()))
                .startsWith("honeycomb-core sandwich tops have a main top 18.7 Hz higher (15")
                .contains(
                        "than solid tops, 4 against 3 instruments; after correction for 6 questions asked at once p ");
        Evidence top = find(study, TOP).evidence().orElseThrow();
        // Welch by hand: s 1.87 and 1.527 Hz, u = √(1.87²/3 + 1.527²/4)
        assertThat(top.difference().standardUncertainty())
                .isCloseTo(Math.sqrt(1.87 * 1.87 / 3 + 1.527 * 1.527 / 4), within(1e-3));
        assertThat(top.permutation().probability()).isCloseTo(1.0 / 35, within(1e-12));
        assertThat(top.furtherInEachGroup().orElseThrow()).isPositive();
        assertThat(top.mixed()).isEmpty();
    }

    /** Kept for one guitar and by mistake for another too; and kept again where the first is no sitting that counts. */
    @Test
    void oneRecordingKeptTwiceIsNoSecondInstrument() {
        threeAgainstFour();
        add("8", ConstructionKind.SOLID, 1.01);
        sharing = List.of(List.of(new SittingId(3), new SittingId(8)));
        assertThat(find(study(), TOP).first().count()).isEqualTo(3);
        assertThat(study().leftOut()).singleElement().satisfies(l -> {
            assertThat(l.sitting()).isEqualTo(new SittingId(8));
            assertThat(l.reason()).isEqualTo("it holds the same recording as sitting 3, which counts already");
        });

        add("8", 1.01, InventedBody.conditions(Stage.IN_THE_WHITE, 45));
        add("8", 1.01, STRUNG);
        sharing = List.of(List.of(new SittingId(3), new SittingId(8)), List.of(new SittingId(9), new SittingId(10)));
        assertThat(find(study(), TOP).first().count())
                .as("a copy counts where the other does not")
                .isEqualTo(4);
    }

    @Test
    void oneRecordingMayBeTapsAndPlucks() {
        threeAgainstFour();
        addPlucks("1", -20, Optional.empty());
        GroupStudy apart = study();
        sharing = List.of(List.of(new SittingId(1), new SittingId(8)));

        assertThat(study().members()).isEqualTo(apart.members());
    }

    @Test
    void whatOnlyTheManyQuestionsKeepFromBeingToldIsPerhaps() {
        add("1", ConstructionKind.SOLID, 0.99);
        add("2", ConstructionKind.SOLID, 1.00);
        add("3", ConstructionKind.SOLID, 1.01);
        add("4", ConstructionKind.HONEYCOMB_SANDWICH, 1.02);
        add("5", ConstructionKind.HONEYCOMB_SANDWICH, 1.03);
        add("6", ConstructionKind.HONEYCOMB_SANDWICH, 1.04);
        GroupStudy study = study();

        assertThat(GroupWords.sentence(find(study, TOP), study.questions()))
                .startsWith(
                        "perhaps honeycomb-core sandwich tops have a main top 5.6 Hz higher (1.4 to 9.8) than solid")
                .contains("3 against 3 instruments: convincing if it were the only question (p = 0.02")
                .endsWith(")");
    }

    /** Main air is 6 dB below main top in all; in sandwiches something else is the strongest, against which both seem softer. */
    @Test
    void anotherStrongestResonanceIsNoDifference() {
        for (int i = 0; i < 8; i++) {
            boolean sandwich = i >= 4;
            String number = Integer.toString(i + 1);
            shelf.add(instrument(number, sandwich ? ConstructionKind.HONEYCOMB_SANDWICH : ConstructionKind.SOLID));
            double topDb = sandwich ? -3 - 0.1 * i : 0;
            sittings.add(InventedBody.of(
                    i + 1,
                    number,
                    DAY,
                    STRUNG,
                    new Findings.OfTaps(InventedResults.levels(topDb - 6, topDb, sandwich ? 0 : -3))));
        }
        GroupStudy study = study();

        assertThat(study.differences())
                .filteredOn(d -> d.evidence().orElseThrow().differs())
                .extracting(d -> d.subject().words())
                .isEmpty();
        assertThat(study.questions()).as("frequency and Q of two").isEqualTo(4);
    }

    @Test
    void twoInstrumentsClaimNothingHoweverOftenTheyWereMeasured() {
        add("1", ConstructionKind.SOLID, 0.99, 0.991, 0.992, 0.989);
        add("2", ConstructionKind.SOLID, 1.00, 1.001, 1.002, 0.999);
        add("3", ConstructionKind.WOOD_SANDWICH, 1.2, 1.201, 1.202, 1.199);
        add("4", ConstructionKind.WOOD_SANDWICH, 1.3, 1.301, 1.302, 1.299);
        GroupStudy study = study();

        assertThat(study.questions()).isZero();
        assertThat(study.differences()).isNotEmpty().allMatch(d -> d.evidence().isEmpty());
        assertThat(GroupWords.sentence(find(study, TOP), 0)).contains("too few to say anything");
        assertThat(study.curves())
                .hasSize(2)
                .allSatisfy(c -> assertThat(c.bands())
                        .isNotEmpty()
                        .allMatch(b -> b.interval95().isEmpty()));
    }

    @Test
    void sittingsOfOneInstrumentAreAveragedNotCounted() {
        threeAgainstFour();
        add("1", 0.97, STRUNG);

        GroupFigures solid = find(study(), TOP).first();

        assertThat(solid.count()).isEqualTo(3);
        assertThat(solid.mean()).isCloseTo(187 * (0.98 + 1 + 1.01) / 3, within(1e-9));
    }

    @Test
    void whatIsLeftOutSaysWhy() {
        threeAgainstFour();
        add("1", 1, InventedBody.conditions(Stage.FINISHED, 45));
        shelf.add(Instrument.of(new ShopNumber("8"), InstrumentKind.CLASSICAL));
        add("8", 1, STRUNG);
        add(
                "2",
                1,
                new Conditions(
                        STRUNG.stage(),
                        STRUNG.air(),
                        STRUNG.strings(),
                        HoleState.COVERED,
                        STRUNG.placing(),
                        STRUNG.microphone(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));

        assertThat(study().leftOut())
                .extracting(LeftOut::reason)
                .satisfiesExactly(
                        a -> assertThat(a).contains("not yet strung"),
                        b -> assertThat(b).contains("construction of the top of instrument 8 is unknown"),
                        c -> assertThat(c).contains("soundhole was covered"));
    }

    @Test
    void damperAirIsTakenOutAndItsDoubtRemains() {
        add("1", ConstructionKind.SOLID, 0.99);
        add("2", ConstructionKind.SOLID, 1.00);
        add("3", ConstructionKind.SOLID, 1.01);
        for (String number : List.of("4", "5", "6")) {
            shelf.add(instrument(number, ConstructionKind.HONEYCOMB_SANDWICH));
        }
        double fall = Math.exp(-0.00225 * 10);
        add("4", 0.99 * fall, InventedBody.conditions(Stage.STRUNG, 55));
        add("5", 1.00 * fall, InventedBody.conditions(Stage.STRUNG, 55));
        add("6", 1.01 * fall, InventedBody.conditions(Stage.STRUNG, 55));

        Evidence top = find(study(), TOP).evidence().orElseThrow();

        assertThat(top.difference().value()).isCloseTo(0, within(1e-6));
        // ten points of a slope that may be wrong by 0.115 % a point, beside the scatter of three and three
        double scatter = 1.87 * Math.sqrt(2.0 / 3);
        assertThat(top.difference().standardUncertainty())
                .isCloseTo(Math.hypot(scatter, 187 * 10 * 0.00115), within(0.05));
    }

    @Test
    void plucksAreComparedInOneStateOfCalibration() {
        threeAgainstFour();
        Optional<CalibrationId> calibration = Optional.of(new CalibrationId(1));
        for (int i = 1; i <= 7; i++) {
            addPlucks(Integer.toString(i), i <= 3 ? 70 + 0.1 * i : 73 + 0.1 * i, calibration);
        }
        addPlucks("1", -20, Optional.empty());
        GroupStudy study = study();

        GroupDifference plucks = find(study, Subject.PLUCKS);
        assertThat(plucks.evidence().orElseThrow().difference().value()).isCloseTo(73.55 - 70.2, within(1e-9));
        assertThat(GroupWords.sentence(plucks, study.questions()))
                .startsWith("honeycomb-core sandwich tops have plucks 3.35 dB louder");
        assertThat(study.leftOut()).extracting(LeftOut::reason).containsExactly("not calibrated, unlike others");
    }
}
