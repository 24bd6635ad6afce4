package io.github.tapwright.desktop.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.conditions.TypedLine;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.StringProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The visit without a microphone; with one it is tested by hand, in the window. */
class SittingModelTest {

    @TempDir
    Path folder;

    private final List<Sitting> kept = new ArrayList<>();
    private TestDesk desk;
    private SittingModel visit;
    private ShopNumber number;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        number = desk.instrument("7");
        visit = new SittingModel(desk.makeSitting(), desk.settings(), desk.work(), desk.notices(), kept::add);
    }

    @AfterEach
    void close() {
        visit.close();
        desk.close();
    }

    private void keepTaps() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.keepFiles();
    }

    @Test
    void recordingsMadeElsewhereBecomeASittingWithTheConditionsTyped() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.form().line(TypedLine.HUMIDITY).set("46,5");
        visit.form().stage().set(Optional.of(Stage.STRUNG));
        visit.keepFiles();

        assertThat(kept).singleElement().satisfies(sitting -> {
            assertThat(sitting.instrument()).isEqualTo(number);
            assertThat(sitting.conditions().air().relativeHumidityPercent()).contains(46.5);
            assertThat(sitting.conditions().stage()).contains(Stage.STRUNG);
            assertThat(sitting.conditions().hole()).isEqualTo(HoleState.OPEN);
        });
        assertThat(visit.files()).isEmpty();
    }

    @Test
    void whatSeldomChangesIsRememberedAndTheAirIsAskedAgain() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.form().line(TypedLine.HUMIDITY).set("46");
        visit.form().line(TypedLine.SUPPORT).set("foam at neck and tail");
        visit.form().line(TypedLine.DISTANCE).set("200");
        visit.keepFiles();
        assertThat(visit.form().line(TypedLine.HUMIDITY).get())
                .as("the same guitar again, another reading")
                .isEmpty();
        visit.instrument().set(Optional.empty());
        visit.begin(number, List.of());

        assertThat(visit.form().line(TypedLine.SUPPORT).get()).isEqualTo("foam at neck and tail");
        assertThat(visit.form().line(TypedLine.DISTANCE).get()).isEqualTo("200");
        assertThat(visit.form().line(TypedLine.HUMIDITY).get()).isEmpty();
    }

    @Test
    void aSlipThatWasKeptIsFollowedOnceItIsCorrected() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        gain().set("20");
        visit.keepFiles();
        visit.files().setAll(desk.taps(102, 196));
        gain().set("30");
        visit.keepFiles();
        correctLast("35");
        visit.refresh();
        assertThat(gain().get()).isEqualTo("35");

        gain().set("40");
        correctLast("36");
        visit.refresh();
        assertThat(gain().get()).as("typed on purpose since").isEqualTo("40");
    }

    private StringProperty gain() {
        return visit.form().line(TypedLine.GAIN);
    }

    private void correctLast(String gain) {
        SittingId last = kept.get(kept.size() - 1).id();
        desk.lookAtShelf().editSitting().edit(last, now -> TestDesk.withGain(now, gain), Progress.SILENT);
    }

    @Test
    void aFigureThatIsNoneStopsTheKeepingWithAWordAndLosesNothing() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.form().line(TypedLine.HUMIDITY).set("damp");
        visit.keepFiles();

        assertThat(kept).isEmpty();
        assertThat(visit.files()).hasSize(1);
        assertThat(desk.said()).contains("damp").contains("21.5");
    }

    @Test
    void theDayTheStringsWereFittedIsKeptAndRememberedWithTheSet() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.form().strings().setName().set("EJ45");
        visit.form().strings().fittedOn().set("2026-03-01");
        visit.keepFiles();
        visit.instrument().set(Optional.empty());
        visit.begin(number, List.of());

        assertThat(kept.get(0).conditions().strings().fittedOn()).contains(LocalDate.of(2026, 3, 1));
        assertThat(visit.form().strings().fittedOn().get()).isEqualTo("2026-03-01");
    }

    @Test
    void stringsFittedTomorrowStopTheKeepingWithAWord() {
        visit.begin(number, List.of(desk.taps(102, 196)));
        visit.form().strings().fittedOn().set("2026-03-15");
        visit.keepFiles();

        assertThat(kept).isEmpty();
        assertThat(visit.files()).hasSize(1);
        assertThat(desk.said()).contains("2026-03-15").contains("2026-03-14");
    }

    @Test
    void theCoveredHoleOfThePlanIsWrittenDown() {
        visit.plan().set(Plan.HOLE_COVERED);
        keepTaps();
        assertThat(kept.get(0).conditions().hole()).isEqualTo(HoleState.COVERED);
    }

    @Test
    void threeSetUpsMakeARepeatabilityStudy() {
        visit.plan().set(Plan.REPEATABILITY);
        for (int i = 0; i < 3; i++) {
            visit.begin(number, List.of(desk.taps(102 + 0.2 * i, 196 - 0.3 * i)));
            visit.keepFiles();
        }
        assertThat(visit.study().setUps()).hasSize(3);
        assertThat(kept).as("one stays at the microphone").isEmpty();

        List<String> told = new ArrayList<>();
        visit.study().whenTakenBack(() -> told.add("taken back"));
        visit.study().keep();
        assertThat(told).isEmpty();
        assertThat(desk.said()).isEqualTo("Kept: comparisons of taps rest on this study from now on");
        assertThat(visit.study().setUps()).isEmpty();
        assertThat(desk.makeSitting().studyBench().kept().study()).isPresent();

        desk.notices().undo();
        assertThat(desk.makeSitting().studyBench().kept().exists()).isFalse();
        assertThat(told).as("an open Workshop screen shows it").hasSize(1);
    }

    @Test
    void aRunOfNotesIsReadByTheTuningOfTheDesk() throws IOException {
        SettingsModel settings = desk.settings();
        settings.change(settings.now().get().tuned(440 * Math.pow(2, 1 / 12.0), Tuning.CLASSICAL_NOTES, 12));
        Path run = folder.resolve("run.wav");
        List<Fret> played = List.of(new Fret(4, 1), new Fret(4, 2), new Fret(3, 1));
        WavWriter.write(run, new FingerboardRun(played, 2.0).recording(48_000, Chance.seeded(3)), WavSamples.INT_24);
        try (SittingModel semitoneUp =
                new SittingModel(desk.makeSitting(), settings, desk.work(), desk.notices(), kept::add)) {
            semitoneUp.plan().set(Plan.NOTES);
            semitoneUp.begin(number, List.of(run));
            semitoneUp.keepFiles();
        }

        assertThat(kept).singleElement().satisfies(sitting -> {
            Fingerboard board = sitting.latest().findings().notes().orElseThrow();
            assertThat(board.settings().tuning().fretCount()).isEqualTo(12);
            assertThat(board.notes().stream().flatMap(n -> n.place().stream()))
                    .containsExactly(new Fret(4, 0), new Fret(4, 1), new Fret(3, 0));
        });
    }

    @Test
    void nothingIsRecordedForNobody() {
        visit.record();
        assertThat(visit.step().get()).isEqualTo(VisitStep.PREPARING);
        assertThat(desk.said()).contains("Choose an instrument first");
    }

    @Test
    void everyPlanTellsHowToSetUpAndWhereEyesAreAtRiskSaysSo() {
        assertThat(Plan.values()).allSatisfy(plan -> assertThat(plan.steps()).hasSizeGreaterThanOrEqualTo(3));
        assertThat(List.of(Plan.NOTES, Plan.LOUDNESS))
                .allSatisfy(plan -> assertThat(String.join(" ", plan.steps())).contains("eye protection"));
    }
}
