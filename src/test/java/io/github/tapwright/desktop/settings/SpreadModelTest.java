package io.github.tapwright.desktop.settings;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Notice;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.synthesis.FingerboardRun;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpreadModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShopNumber seven;
    private SettingsModel settings;
    private SpreadModel model;

    @BeforeEach
    void open() throws Exception {
        desk = new TestDesk(folder);
        seven = desk.instrument("7");
        settings = desk.settings();
        model = new SpreadModel(desk.studySpread(), settings, desk.work(), desk.notices(), ZoneOffset.UTC);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private List<SittingId> setUps(int count) {
        List<SittingId> made = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Sitting sitting = desk.sitting(seven, 102 + 0.2 * i, 196 - 0.3 * i, TestDesk.strung(HoleState.OPEN));
            made.add(sitting.id());
        }
        return made;
    }

    private void study(List<SittingId> setUps) {
        model.instrument().set(Optional.of(seven));
        model.refresh();
        setUps.forEach(model::toggle);
        model.tryOut();
    }

    private SetUpSpread triedSpread() {
        return ((Study.OfTaps) model.tried().get().orElseThrow()).of().spread().orElseThrow();
    }

    private void study(StudyKind kind, List<SittingId> sittings) {
        model.kind().set(kind);
        study(sittings);
    }

    private List<SittingId> runs(double... longer) throws Exception {
        List<SittingId> made = new ArrayList<>();
        for (double each : longer) {
            made.add(desk.ringing(seven, each).id());
        }
        return made;
    }

    private List<SittingId> plucks(String... gains) throws Exception {
        List<SittingId> made = new ArrayList<>();
        for (String gain : gains) {
            made.add(desk.plucks(seven, gain, 1 + 0.05 * made.size()).id());
        }
        return made;
    }

    private SetUpSpread spread() {
        return model.held().get().orElseThrow().spread();
    }

    private String words() {
        return String.join("\n", model.sentences());
    }

    @Test
    void withoutAStudyTheCautiousFiguresAreShownAsAssumed() {
        model.refresh();
        assertThat(spread()).isEqualTo(SetUpSpread.USUAL);
        assertThat(words())
                .contains("0.3 % of frequency, 5 % of Q and 1 dB")
                .contains("assumed, not measured on this bench")
                .contains("No study of taps is kept yet");
    }

    @Test
    void aSittingSetAsideIsNotOfferedAndAStudyThatRestsOnItHoldsNoLonger() {
        List<SittingId> setUps = setUps(4);
        study(setUps);
        model.keep();
        assertThat(words()).doesNotContain("set aside");

        desk.setAside(setUps.get(1), "the foam was missing");
        model.refresh();

        assertThat(model.sittings()).extracting(SittingSummary::id).hasSize(3).doesNotContain(setUps.get(1));
        assertThat(words()).contains("sitting " + setUps.get(1) + " is set aside (the foam was missing)");
        assertThat(spread()).isEqualTo(SetUpSpread.LAPSED);
    }

    @Test
    void aStudyIsWorkedOutBeforeItIsKept() {
        study(setUps(3));
        assertThat(model.trial())
                .containsExactly(
                        "Not kept: 3 set-ups of instrument 7, 2026-03-14 (sittings 1, 2, 3). Fewer than 5 set-ups: its figures are"
                                + " themselves uncertain.",
                        "Setting up again moves figures by " + triedSpread().words()
                                + " (one standard deviation, 2 degrees of freedom).");
        assertThat(spread()).isEqualTo(SetUpSpread.USUAL);

        model.keep();
        assertThat(spread())
                .isEqualTo(desk.studySpread().studyBench().spread(Optional.empty()))
                .extracting(s -> s.frequency().basis())
                .isEqualTo(SetUpSpread.Basis.STUDIED);
        assertThat(words())
                .contains("measured on this bench")
                .contains("The study of taps kept: 3 set-ups of instrument 7, 2026-03-14 (sittings 1, 2, 3).");
        assertThat(model.tried().get()).isEmpty();
        assertThat(model.ticked()).isEmpty();
        assertThat(desk.said()).isEqualTo("Kept: comparisons of taps rest on this study from now on");
    }

    @Test
    void keepingAnotherStudyCanBeTakenBack() {
        List<SittingId> made = setUps(4);
        study(made.subList(0, 3));
        model.keep();
        SetUpSpread former = spread();
        study(made.subList(1, 4));
        model.keep();
        assertThat(spread()).isNotEqualTo(former);

        desk.notices().undo();
        assertThat(spread()).isEqualTo(former);
        assertThat(words()).contains("(sittings 1, 2, 3)");
    }

    @Test
    void keepingTheFirstStudyOfAKindIsTakenBackAloneAndLeavesTheOthers() throws Exception {
        study(StudyKind.NOTES, runs(1, 1.04, 1.1));
        model.keep();
        study(StudyKind.TAPS, setUps(3));
        model.keep();

        desk.notices().undo();

        assertThat(spread()).isEqualTo(SetUpSpread.USUAL);
        assertThat(words()).contains("No study of taps is kept yet");
        model.kind().set(StudyKind.NOTES);
        assertThat(words())
                .contains("The study of notes kept: 3 sittings of instrument 7, 2026-03-14 (sittings 1, 2, 3).");
    }

    @Test
    void aStudyIsForgottenAndThatCanBeTakenBack() {
        model.refresh();
        assertThat(model.keepsOne()).isFalse();
        study(setUps(3));
        model.keep();
        SetUpSpread studied = spread();
        assertThat(model.keepsOne()).isTrue();

        model.forget();
        assertThat(spread()).isEqualTo(SetUpSpread.USUAL);
        assertThat(model.keepsOne()).isFalse();
        assertThat(desk.said()).startsWith("Forgotten; no sitting was deleted");

        desk.notices().undo();
        assertThat(spread()).isEqualTo(studied);
    }

    @Test
    void forgettingOneKindLeavesTheOthers() {
        study(setUps(3));
        model.keep();
        SetUpSpread studied = spread();
        model.kind().set(StudyKind.NOTES);
        assertThat(model.keepsOne()).isFalse();

        model.forget();

        assertThat(desk.said()).contains("no study of notes is kept, so there is nothing to forget");
        assertThat(spread()).isEqualTo(studied);
    }

    @Test
    void takingBackDoesNotPutAnOldStudyBeforeANewerOne() {
        study(setUps(3));
        model.keep();
        model.forget();
        Notice.Undo undo = desk.notices().latest().get().flatMap(Notice::undo).orElseThrow();
        study(setUps(4));
        model.keep();
        SetUpSpread newer = spread();

        undo.run();

        assertThat(spread()).isEqualTo(newer);
    }

    @Test
    void takingBackThatOneWasKeptLeavesANewerOneAlone() {
        List<SittingId> made = setUps(4);
        study(made.subList(0, 3));
        model.keep();
        Notice.Undo undo = desk.notices().latest().get().flatMap(Notice::undo).orElseThrow();
        study(made.subList(1, 4));
        model.keep();
        SetUpSpread newer = spread();

        undo.run();

        assertThat(spread()).isEqualTo(newer);
        assertThat(words()).contains("(sittings 2, 3, 4)");
    }

    @Test
    void otherTicksPutTheTrialAway() {
        List<SittingId> made = setUps(4);
        study(made);
        model.toggle(made.get(0));
        assertThat(model.trial()).isEmpty();

        model.keep();
        assertThat(spread()).as("nothing was worked out").isEqualTo(SetUpSpread.USUAL);
    }

    @Test
    void setUpsThatMayNotBeComparedAreRefusedWithTheReason() {
        List<SittingId> made = setUps(2);
        study(List.of(
                made.get(0),
                made.get(1),
                desk.sitting(seven, 102, 190, TestDesk.strung(HoleState.COVERED))
                        .id()));
        assertThat(model.trial()).isEmpty();
        assertThat(desk.said()).contains("may not be compared");
        assertThat(model.title(model.sittings().get(2))).contains("hole covered");
    }

    @Test
    void onlySittingsOfTheKindAreOfferedAndOthersLoseTheirTicks() throws Exception {
        List<SittingId> made = setUps(3);
        SittingId run = desk.notes(seven, new FingerboardRun(List.of(), 1.0)).id();
        study(made);
        assertThat(model.sittings()).extracting(SittingSummary::id).isEqualTo(made);
        assertThat(model.title(model.sittings().get(0))).isEqualTo("7, 2026-03-14 09:26, strung (sitting 1)");

        model.kind().set(StudyKind.NOTES);
        assertThat(model.sittings()).extracting(SittingSummary::id).containsExactly(run);
        assertThat(model.ticked()).isEmpty();
        assertThat(model.shown()).isEmpty();
    }

    @Test
    void aStudyOfNotesIsWorkedOutInTheWordsOfTheCommandBeforeItIsKept() throws Exception {
        model.refresh();
        model.kind().set(StudyKind.NOTES);
        assertThat(words())
                .contains(
                        "Between sittings of notes playing again moves decay times by 5 % and levels by 1 dB (assumed,")
                .contains("No study of notes is kept yet. Play one guitar anew for 5 sittings");

        study(runs(1, 1.04, 1.1));
        assertThat(model.trial())
                .startsWith(
                        "Not kept: 3 sittings of instrument 7, 2026-03-14 (sittings 1, 2, 3). Fewer than 5 sittings: its figures"
                                + " are themselves uncertain.")
                .anyMatch(w -> w.startsWith("Playing again moves, as one standard deviation, early decays by "))
                .anyMatch(w -> w.startsWith("Not studied, level LAFmax: gain: unknown / unknown"));
        assertThat(words()).as("nothing is kept yet").contains("(assumed,").doesNotContain("measured on this bench);");

        model.keep();
        assertThat(desk.said()).isEqualTo("Kept: comparisons of notes rest on this study from now on");
        assertThat(words())
                .contains("Between sittings of notes playing again moves early decays by ", "(measured on this bench)")
                .contains("The study of notes kept: 3 sittings of instrument 7, 2026-03-14 (sittings 1, 2, 3).")
                .as("what it could not say stays beside its figures")
                .contains("Not studied, level LAFmax: gain: unknown / unknown");
        assertThat(model.tried().get()).isEmpty();
        assertThat(model.shown()).as("its figures stay in sight").isPresent();
        assertThat(spread()).as("notes say nothing of taps").isEqualTo(SetUpSpread.USUAL);

        settings.change(settings.now().get().spreading(Optional.of(SetUpSpread.given(0.002, 0.04, 0.8))));
        assertThat(words())
                .contains("decay times by 4 % and levels by 0.8 dB (as given)", "It would say early decays by ");
    }

    @Test
    void aStudyOfPlucksIsKeptForPlucksAlone() throws Exception {
        study(StudyKind.PLUCKS, plucks("30 dB", "30 dB", "30 dB"));
        model.keep();
        assertThat(desk.said()).isEqualTo("Kept: comparisons of plucks rest on this study from now on");
        assertThat(words())
                .contains("Between sittings of plucks playing again moves levels by ", "(measured on this bench)")
                .contains("The study of plucks kept: 3 sittings");
        model.kind().set(StudyKind.NOTES);
        assertThat(words()).contains("No study of notes is kept yet");
        assertThat(model.shown()).isEmpty();
    }

    @Test
    void sittingsThatWerePlayedDifferentlyAreRefusedWithTheReasonAndARemedy() throws Exception {
        study(StudyKind.PLUCKS, plucks("30 dB", "30 dB", "36 dB"));
        assertThat(model.trial()).isEmpty();
        assertThat(desk.said()).contains("sittings 1 and 3 may not be compared, gain: 30 dB / 36 dB", "leave one out");
    }

    @Test
    void aStudyOfWhichNothingCouldBeStudiedIsNotOfferedToBeKept() throws Exception {
        List<SittingId> made = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            made.add(desk.notes(seven, new FingerboardRun(List.of(new Fret(6, i)), 3))
                    .id());
        }
        study(StudyKind.NOTES, made);
        assertThat(model.trial())
                .contains("Nothing could be studied, so there is nothing to keep.")
                .anyMatch(w -> w.startsWith("Not studied, early decay: too few places have it in every sitting"));
        assertThat(model.tried().get())
                .hasValueSatisfying(s -> assertThat(s.tells()).isFalse());
    }

    @Test
    void aStudyWorkedOutTooLateDoesNotStandUnderAnotherKind() throws Exception {
        List<SittingId> made = runs(1, 1.04, 1.1);
        HeldWork slow = new HeldWork(desk.notices());
        model = new SpreadModel(desk.studySpread(), settings, slow, desk.notices(), ZoneOffset.UTC);
        model.kind().set(StudyKind.NOTES);
        model.instrument().set(Optional.of(seven));
        slow.finish();
        made.forEach(model::toggle);
        model.tryOut();
        slow.work();
        model.kind().set(StudyKind.TAPS);
        slow.finish();

        assertThat(model.trial()).isEmpty();
        assertThat(model.sittings()).isEmpty();
    }

    @Test
    void theMakersOwnFiguresGoBeforeTheStudyAndTheScreenSaysSo() {
        study(setUps(3));
        model.keep();
        SetUpSpread studied = spread();
        SetUpSpread own = SetUpSpread.given(0.002, 0.04, 0.8);
        settings.change(settings.now().get().spreading(Optional.of(own)));

        assertThat(spread()).isEqualTo(own);
        assertThat(words())
                .contains("as given")
                .contains("The study of taps kept: 3 set-ups")
                .contains("It would say " + studied.words());

        model.keep();
        settings.change(settings.now().get().spreading(Optional.empty()));
        assertThat(spread()).isEqualTo(studied);
    }

    @Test
    void keepingAStudyBesideOwnFiguresSaysThatTheseStillCount() {
        settings.change(settings.now().get().spreading(Optional.of(SetUpSpread.given(0.002, 0.04, 0.8))));
        study(setUps(3));
        model.keep();
        assertThat(desk.said()).contains("your own figures until you empty them");
    }
}
