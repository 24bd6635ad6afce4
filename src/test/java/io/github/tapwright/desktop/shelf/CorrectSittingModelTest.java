package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.conditions.TypedLine;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WrittenDown;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CorrectSittingModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private SettingsModel settings;
    private ShelfModel shelf;
    private CorrectSittingModel model;
    private SittingId id;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        settings = desk.settings();
        shelf = shelf(desk.work());
        model = shelf.correctSitting();
        ShopNumber number = desk.instrument("7");
        id = desk.sitting(number, 102, 196, TestDesk.strung(HoleState.OPEN)).id();
    }

    private ShelfModel shelf(Work work) {
        return new ShelfModel(desk.lookAtShelf(), settings, work, desk.notices());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Sitting kept() {
        return desk.showSitting().show(id);
    }

    private EditSitting edit() {
        return desk.lookAtShelf().editSitting();
    }

    @Test
    void theFormIsFilledWithWhatIsKnownAndWhatIsUnknownStandsEmpty() {
        model.open(id);

        assertThat(model.open().get()).isTrue();
        assertThat(model.title().get()).isEqualTo("Correct sitting 1 of instrument 7, for taps");
        assertThat(model.taken().get()).isEqualTo("2026-03-14 09:26");
        assertThat(model.hole().get()).isEqualTo(HoleState.OPEN);
        assertThat(model.form().stage().get()).contains(Stage.STRUNG);
        assertThat(model.form().line(TypedLine.TEMPERATURE).get()).isEqualTo("20");
        assertThat(model.form().line(TypedLine.HUMIDITY).get()).isEqualTo("45");
        assertThat(model.form().line(TypedLine.GAIN).get()).isEmpty();
    }

    @Test
    void aCorrectionIsKeptToldInWordsAndTakenBack() {
        Sitting before = kept();
        model.open(id);
        model.form().line(TypedLine.GAIN).set("30 dB");
        model.form().line(TypedLine.HUMIDITY).set("");
        assertThat(model.changes().get())
                .isEqualTo("Will change: relative humidity taken back (was 45 %); gain 30 dB (was not written down).");
        model.save();

        assertThat(model.open().get()).isFalse();
        assertThat(kept().conditions().microphone().gain()).contains("30 dB");
        assertThat(kept().conditions().air().relativeHumidityPercent()).isEmpty();
        assertThat(kept().takenAt()).isEqualTo(before.takenAt());
        assertThat(kept().analyses()).isEqualTo(before.analyses());
        assertThat(desk.said())
                .isEqualTo(
                        "Corrected sitting 1: relative humidity taken back (was 45 %); gain 30 dB (was not written down)");
        assertThat(shelf.found().get(0).sittings().get(0).air().relativeHumidityPercent())
                .isEmpty();

        desk.notices().undo();
        assertThat(kept().conditions()).isEqualTo(before.conditions());
        assertThat(desk.said()).isEqualTo("Sitting 1 is written down as it was before");
        assertThat(edit().corrected(id)).as("every entry replaced is kept").hasSize(2);
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void anotherSoundholeIsAnalysedAnewAndTheWordsSaySo() {
        Sitting before = kept();
        model.open(id);
        model.hole().set(HoleState.COVERED);
        assertThat(model.changes().get())
                .startsWith("Will change: soundhole covered (was open).")
                .contains("analysed anew");
        model.save();

        assertThat(kept().conditions().hole()).isEqualTo(HoleState.COVERED);
        assertThat(kept().analyses()).hasSize(2).startsWith(before.latest());
        assertThat(desk.said())
                .isEqualTo("Corrected sitting 1: soundhole covered (was open). Analysed anew for what is written down"
                        + " now; earlier results stay beside it");

        desk.notices().undo();
        assertThat(kept().latest().findings()).isEqualTo(before.latest().findings());
    }

    @Test
    void theDayItWasTakenIsCorrectedWithOrWithoutItsTime() {
        model.open(id);
        model.taken().set("2026-03-12");
        model.save();
        assertThat(kept().takenAt().text(ZoneOffset.UTC)).isEqualTo("2026-03-12");
        assertThat(desk.said()).isEqualTo("Corrected sitting 1: taken 2026-03-12 (was 2026-03-14 09:26)");

        model.open(id);
        model.taken().set("2026-03-11 17:05");
        model.save();
        assertThat(kept().takenAt().text(ZoneOffset.UTC)).isEqualTo("2026-03-11 17:05");
    }

    @Test
    void whatCannotBeIsRefusedAtTheFormAndNothingTypedIsLost() {
        Sitting before = kept();
        model.open(id);
        refused(TypedLine.HUMIDITY, "460", "the relative humidity in % must lie between 1 and 100, was 460");
        refused(TypedLine.HUMIDITY, "damp", "\"damp\" is no figure");
        model.form().line(TypedLine.HUMIDITY).set("46");
        model.taken().set("2026-05-01");
        model.save();
        assertThat(model.refusal().get()).contains("a sitting on 2026-05-01 is still to come, today is 2026-03-14");
        model.taken().set("");
        model.save();
        assertThat(model.refusal().get()).contains("nothing is no day").contains("2026-03-14 09:26");
        model.taken().set("2026-03-10");
        model.form().strings().fittedOn().set("2026-03-12");
        model.save();
        assertThat(model.refusal().get())
                .contains("strings fitted on 2026-03-12 cannot have been struck on 2026-03-10");

        assertThat(model.open().get()).isTrue();
        assertThat(model.form().line(TypedLine.HUMIDITY).get()).isEqualTo("46");
        assertThat(kept()).isEqualTo(before);

        model.form().strings().fittedOn().set("2026-03-09");
        model.save();
        assertThat(model.refusal().get()).isEmpty();
        assertThat(kept().conditions().air().relativeHumidityPercent()).contains(46.0);
        assertThat(desk.faults()).isEmpty();
    }

    private void refused(TypedLine line, String typed, String words) {
        model.form().line(line).set(typed);
        model.save();
        assertThat(model.refusal().get()).contains(words);
        assertThat(model.form().line(line).get()).isEqualTo(typed);
    }

    @Test
    void degreesFahrenheitAreReadAndToldAsSuch() {
        settings.change(settings.now().get().in(Units.FAHRENHEIT));
        model.open(id);
        assertThat(model.form().line(TypedLine.TEMPERATURE).get()).isEqualTo("68");
        model.form().line(TypedLine.TEMPERATURE).set("70.7");
        assertThat(model.changes().get()).isEqualTo("Will change: temperature 70.7 °F (was 68 °F).");
        model.save();
        assertThat(kept().conditions().air().temperatureCelsius().orElseThrow())
                .isEqualTo(21.5, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(desk.said()).isEqualTo("Corrected sitting 1: temperature 70.7 °F (was 68 °F)");
    }

    @Test
    void theSoundholeOfWhatWasPlayedAsksForNoNewAnalysis() throws IOException {
        id = desk.plucks(desk.instrument("8"), "30 dB", 1).id();
        model.open(id);
        model.hole().set(HoleState.COVERED);
        assertThat(model.changes().get()).contains("soundhole").doesNotContain("analysed anew");

        model.save();

        assertThat(kept().conditions().hole()).isEqualTo(HoleState.COVERED);
        assertThat(kept().analyses()).hasSize(1);
    }

    @Test
    void onlyWhatWasTouchedIsChanged() {
        model.open(id);
        assertThat(model.changes().get()).isEqualTo("Nothing is changed yet.");
        edit().edit(
                        id,
                        now -> new WrittenDown(now.instrument(), now.takenAt(), TestDesk.strung(HoleState.UNKNOWN)),
                        (step, done, all) -> {});
        model.form().line(TypedLine.GAIN).set("30 dB");
        model.save();
        assertThat(kept().conditions().hole()).as("corrected in another window").isEqualTo(HoleState.UNKNOWN);
        assertThat(kept().conditions().microphone().gain()).contains("30 dB");
    }

    @Test
    void takenBackOnlyTheCorrectionItselfIs() {
        model.open(id);
        model.hole().set(HoleState.COVERED);
        model.save();
        edit().edit(id, now -> TestDesk.withGain(now, "30 dB"), Progress.SILENT);
        desk.notices().undo();
        assertThat(kept().conditions().hole()).isEqualTo(HoleState.OPEN);
        assertThat(kept().conditions().microphone().gain())
                .as("corrected since")
                .contains("30 dB");
    }

    @Test
    void savedTwiceInARowIsOneCorrection() {
        HeldWork work = new HeldWork(desk.notices());
        CorrectSittingModel held = shelf(work).correctSitting();
        held.open(id);
        work.finish();
        held.hole().set(HoleState.COVERED);
        held.save();
        held.save();
        work.finish();
        assertThat(edit().corrected(id)).hasSize(1);
        assertThat(kept().analyses()).hasSize(2);
        assertThat(desk.said()).startsWith("Corrected sitting 1");
        assertThat(held.open().get()).isFalse();
    }

    @Test
    void aLateAnswerClosesNoOtherForm() {
        SittingId other =
                desk.sitting(new ShopNumber("7"), 103, 198, Conditions.UNKNOWN).id();
        HeldWork work = new HeldWork(desk.notices());
        CorrectSittingModel held = shelf(work).correctSitting();
        held.open(id);
        work.finish();
        held.form().line(TypedLine.GAIN).set("30 dB");
        held.save();
        held.leave();
        held.open(other);
        work.finish();
        assertThat(held.open().get()).isTrue();
        assertThat(held.title().get()).startsWith("Correct sitting " + other);
        assertThat(kept().conditions().microphone().gain()).contains("30 dB");
    }

    @Test
    void savedUntouchedNothingIsCorrected() {
        model.open(id);
        model.save();
        assertThat(desk.said()).isEqualTo("Nothing was changed");
        assertThat(model.open().get()).isFalse();
        assertThat(edit().corrected(id)).isEmpty();
    }

    @Test
    void whatWasTypedComesBackAfterLeavingByMistake() {
        model.open(id);
        model.leave();
        assertThat(desk.said()).as("nothing to lose").isEmpty();

        model.open(id);
        model.form().line(TypedLine.GAIN).set("30 dB");
        model.leave();
        assertThat(kept().conditions().microphone().gain()).isEmpty();
        desk.notices().undo();
        assertThat(model.open().get()).isTrue();
        assertThat(model.form().line(TypedLine.GAIN).get()).isEqualTo("30 dB");
        assertThat(shelf.requireNoCorrection()).isFalse();
        assertThat(desk.said()).isEqualTo("Finish the form on the shelf, or leave it, first");
        model.save();
        assertThat(model.open().get()).isFalse();
        assertThat(kept().conditions().microphone().gain()).contains("30 dB");
    }

    @Test
    void whereTheAnalysisFailsTheCorrectionIsKeptAndMayBeSavedAgain() throws IOException {
        Path original = original();
        Path away = original.resolveSibling("away");
        java.nio.file.Files.move(original, away);
        model.open(id);
        model.hole().set(HoleState.COVERED);
        model.save();
        assertThat(kept().conditions().hole()).isEqualTo(HoleState.COVERED);
        assertThat(kept().analyses()).hasSize(1);
        assertThat(model.open().get()).isTrue();
        assertThat(model.refusal().get()).startsWith("The correction is kept.");
        assertThat(desk.said()).startsWith("Analysing sitting 1 anew: ");

        java.nio.file.Files.move(away, original);
        model.save();
        assertThat(kept().analyses()).hasSize(2);
        assertThat(model.open().get()).isFalse();
        assertThat(desk.said()).contains("Analysed anew");
    }

    @Test
    void whatIsTypedWhileTheAnalysisFailsStaysAndIsAnalysedWithTheRest() throws IOException {
        Path original = original();
        Path away = original.resolveSibling("away");
        java.nio.file.Files.move(original, away);
        HeldWork work = new HeldWork(desk.notices());
        CorrectSittingModel held = shelf(work).correctSitting();
        held.open(id);
        work.finish();
        held.hole().set(HoleState.COVERED);
        held.save();
        held.form().line(TypedLine.GAIN).set("30 dB");
        held.form().line(TypedLine.HUMIDITY).set("4x");
        work.finish();
        assertThat(held.form().line(TypedLine.HUMIDITY).get()).isEqualTo("4x");
        held.form().line(TypedLine.HUMIDITY).set("45");
        held.save();
        work.finish();
        assertThat(held.refusal().get()).startsWith("The correction is kept.");
        assertThat(kept().conditions().microphone().gain()).contains("30 dB");
        held.save();
        held.form().line(TypedLine.GAIN).set("35 dB");
        work.finish();
        assertThat(held.form().line(TypedLine.GAIN).get()).as("typed since").isEqualTo("35 dB");
        assertThat(held.changes().get()).isEqualTo("Will change: gain 35 dB (was 30 dB).");

        java.nio.file.Files.move(away, original);
        held.save();
        work.finish();
        assertThat(kept().conditions().microphone().gain()).contains("35 dB");
        assertThat(kept().analyses()).hasSize(2);
        assertThat(held.open().get()).isFalse();
    }

    @Test
    void aFormReadLateOpensOverNoOther() {
        HeldWork work = new HeldWork(desk.notices());
        ShelfModel held = shelf(work);
        held.correct(id);
        held.correct(instrument());
        work.finish();
        assertThat(held.correctSitting().open().get()).isFalse();
        assertThat(held.correcting().get()).containsSame(held.correctInstrument());
        assertThat(desk.said()).isEqualTo("Finish the form on the shelf, or leave it, first");
    }

    @Test
    void whatWasTypedComesBackOverNoOtherForm() {
        InstrumentForm other = shelf.correctInstrument().form();
        shelf.correct(instrument());
        other.line(InstrumentLine.NICKNAME).set("the loud one");
        shelf.correctInstrument().leave();
        shelf.correct(id);
        desk.notices().undo();
        assertThat(shelf.correctInstrument().open().get()).isFalse();
        assertThat(desk.said()).startsWith("Finish the form on the shelf, or leave it, first; then undo");

        model.leave();
        desk.notices().undo();
        assertThat(shelf.correcting().get()).containsSame(shelf.correctInstrument());
        assertThat(other.line(InstrumentLine.NICKNAME).get()).isEqualTo("the loud one");
    }

    private Instrument instrument() {
        return desk.listInstruments().list().get(0);
    }

    private Path original() throws IOException {
        try (var files = java.nio.file.Files.walk(folder.resolve("archive"))) {
            return files.filter(f -> f.toString().endsWith(".wav")).findFirst().orElseThrow();
        }
    }
}
