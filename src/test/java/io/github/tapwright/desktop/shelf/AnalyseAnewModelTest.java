package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.desktop.work.BackgroundWork;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WithdrawCalibration;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AnalyseAnewModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShelfModel shelf;
    private AnalyseAnewModel model;
    private ShopNumber number;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        shelf = shelf(desk.work());
        model = shelf.analyseAnew();
        number = desk.instrument("7");
    }

    private ShelfModel shelf(Work work) {
        return new ShelfModel(desk.lookAtShelf(), desk.settings(), work, desk.notices());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Optional<CalibrationId> basis(SittingId of) {
        return desk.showSitting()
                .show(of)
                .latest()
                .findings()
                .plucks()
                .orElseThrow()
                .calibration();
    }

    @Test
    void tapsAreAnalysedAtOnceAndWhereEveryFigureIsTheSameNothingIsAdded() {
        SittingId id =
                desk.sitting(number, 102, 196, TestDesk.strung(HoleState.OPEN)).id();
        shelf.analyseAnew(id);
        assertThat(model.open().get()).isFalse();
        assertThat(desk.said()).isEqualTo("Sitting 1: every figure is the same, nothing added");
        assertThat(desk.showSitting().show(id).analyses()).hasSize(1);
    }

    @Test
    void theSettingsOfTheLatestAnalysisHold() {
        Sitting sitting = desk.sitting(number, 102, 196, Conditions.UNKNOWN);
        TapSettings narrow = desk.reanalyseSitting()
                .reanalyse(sitting.id(), Optional.of(TapSettings.STANDARD.withBand(60, 150)), Progress.SILENT)
                .taps()
                .orElseThrow()
                .settings();
        shelf.analyseAnew(sitting.id());
        assertThat(desk.showSitting()
                        .show(sitting.id())
                        .latest()
                        .taps()
                        .orElseThrow()
                        .settings())
                .isEqualTo(narrow);
    }

    @Test
    void plucksWithoutAnyCalibrationKeptAreAnalysedAtOnce() throws IOException {
        SittingId id = desk.plucks(number, "30 dB", 1).id();
        shelf.analyseAnew(id);
        assertThat(model.open().get()).isFalse();
        assertThat(desk.said()).startsWith("Sitting 1: every figure is the same");
    }

    @Test
    void plucksAreMeasuredByAnotherCalibrationAndAsBeforeOnUndo() throws IOException {
        CalibrationId first = desk.calibration(114);
        CalibrationId second = desk.calibration(94);
        SittingId id = desk.plucks(number, "30 dB", 1, Optional.of(first)).id();
        shelf.analyseAnew(id);
        assertThat(model.title().get()).isEqualTo("Analyse anew sitting 1 of instrument 7, for plucks");
        assertThat(model.changes().get()).startsWith("So far its levels are in dB re 20 µPa by calibration 1.");
        assertThat(model.bases())
                .extracting(LevelBasis::words)
                .containsExactly(
                        "calibration 1, as before",
                        "no calibration: dB re full scale",
                        "calibration 2, 2026-03-14 09:26, 94 dB, measuring microphone, gain 30 dB");
        model.basis().set(model.bases().get(2));
        model.save();

        assertThat(model.open().get()).isFalse();
        assertThat(basis(id)).contains(second);
        assertThat(desk.said())
                .isEqualTo("Analysed sitting 1 anew: 6 plucks in dB re 20 µPa by calibration 2; before, 6 plucks in dB"
                        + " re 20 µPa by calibration 1. Earlier results stay beside it");

        desk.notices().undo();
        assertThat(basis(id)).contains(first);
        assertThat(desk.showSitting().show(id).analyses())
                .as("every result stays")
                .hasSize(3);
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void aCalibrationChosenByMistakeIsLeftAgain() throws IOException {
        CalibrationId only = desk.calibration(94);
        SittingId id = desk.plucks(number, "30 dB", 1).id();
        shelf.analyseAnew(id);
        model.basis().set(model.bases().get(1));
        model.save();
        assertThat(basis(id)).contains(only);

        desk.notices().undo();
        assertThat(basis(id)).as("none, as it was").isEmpty();

        shelf.analyseAnew(id);
        model.basis().set(model.bases().get(1));
        model.save();
        shelf.analyseAnew(id);
        model.basis().set(model.bases().get(1));
        assertThat(model.basis().get().words()).isEqualTo("no calibration: dB re full scale");
        model.save();
        assertThat(basis(id)).as("none, as was chosen").isEmpty();

        desk.notices().undo();
        assertThat(basis(id)).contains(only);
    }

    @Test
    void whatWasChosenIsDoneThoughTheCalibrationIsInUseAgainSince() throws IOException {
        CalibrationId first = desk.calibration(94);
        desk.calibration(114);
        SittingId id = desk.plucks(number, "30 dB", 1, Optional.of(first)).id();
        WithdrawCalibration withdraw = desk.lookAtCalibrations().withdrawCalibration();
        withdraw.withdraw(first, "another gain");
        shelf.analyseAnew(id);
        assertThat(model.basis().get().words()).isEqualTo("no calibration: dB re full scale");
        withdraw.takeBack(first);
        model.save();
        assertThat(basis(id)).isEmpty();
    }

    @Test
    void whatWasAnalysedAgainElsewhereSinceStays() throws IOException {
        CalibrationId first = desk.calibration(114);
        desk.calibration(94);
        CalibrationId third = desk.calibration(104);
        SittingId id = desk.plucks(number, "30 dB", 1, Optional.of(first)).id();
        shelf.analyseAnew(id);
        model.basis().set(model.bases().get(2));
        model.save();
        desk.reanalyseSitting().reanalyse(id, third, Progress.SILENT);
        desk.notices().undo();
        assertThat(basis(id)).contains(third);
        assertThat(desk.said()).isEqualTo("Sitting 1 stays as it is: analysed again elsewhere since");
    }

    @Test
    void aCalibrationWithdrawnWhileTheFormWasOpenIsRefusedWithTheButtonThatHelps() throws IOException {
        CalibrationId first = desk.calibration(94);
        SittingId id = desk.plucks(number, "30 dB", 1).id();
        shelf.analyseAnew(id);
        model.basis().set(model.bases().get(1));
        desk.lookAtCalibrations().withdrawCalibration().withdraw(first, "another gain");
        model.save();
        assertThat(basis(id)).isEmpty();
        assertThat(desk.said())
                .isEqualTo(
                        "Analysing sitting 1 anew: calibration 1 is withdrawn (another gain); choose another, or take"
                                + " it back with “Use this again” on the Workshop screen");
    }

    @Test
    void givenUpItLeavesTheSittingAsItWas() throws IOException {
        CalibrationId first = desk.calibration(114);
        desk.calibration(94);
        SittingId id = desk.plucks(number, "30 dB", 1, Optional.of(first)).id();
        Queue<Runnable> screen = new ConcurrentLinkedQueue<>();
        try (BackgroundWork work = new BackgroundWork(screen::add, desk.notices())) {
            ShelfModel held = shelf(work);
            held.analyseAnew(id);
            deliverUntilIdle(work, screen);
            held.analyseAnew().basis().set(held.analyseAnew().bases().get(2));
            held.analyseAnew().save();
            work.running().get(0).giveUp();
            deliverUntilIdle(work, screen);
        }
        assertThat(basis(id)).contains(first);
        assertThat(desk.said()).isEqualTo("Given up: Analysing sitting 1 anew");
    }

    private static void deliverUntilIdle(BackgroundWork work, Queue<Runnable> screen) {
        long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!work.running().isEmpty() && System.nanoTime() < patience) {
            Runnable next = screen.poll();
            if (next != null) {
                next.run();
            }
        }
    }

    @Test
    void aFailureIsToldInWordsAndTheSittingStays() throws IOException {
        SittingId id = desk.sitting(number, 102, 196, Conditions.UNKNOWN).id();
        try (var files = Files.walk(folder.resolve("archive"))) {
            Path original =
                    files.filter(f -> f.toString().endsWith(".wav")).findFirst().orElseThrow();
            Files.move(original, original.resolveSibling("away"));
        }
        shelf.analyseAnew(id);
        assertThat(desk.said()).startsWith("Analysing sitting 1 anew: ");
        assertThat(desk.showSitting().show(id).analyses()).hasSize(1);
        assertThat(desk.faults()).isEmpty();
    }
}
