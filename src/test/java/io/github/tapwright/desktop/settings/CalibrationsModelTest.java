package io.github.tapwright.desktop.settings;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrationsModelTest {

    private static final String TYPED = "114 was typed, the calibrator makes 94";

    @TempDir
    Path folder;

    private TestDesk desk;
    private CalibrationsModel model;
    private CalibrationId wrong;
    private SittingId sitting;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        wrong = desk.calibration(114);
        ShopNumber number = desk.instrument("7");
        sitting = desk.plucks(number, "30 dB", 1, Optional.of(wrong)).id();
        model = new CalibrationsModel(desk.lookAtCalibrations(), desk.work(), desk.notices());
        model.refresh();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Optional<String> withdrawn() {
        return desk.lookAtCalibrations()
                .showCalibration()
                .show(wrong)
                .withdrawn()
                .map(OutOfUse::reason);
    }

    private PluckRun plucks() {
        return desk.showSitting().show(sitting).latest().findings().plucks().orElseThrow();
    }

    private void withdraw() {
        model.reason().set(TYPED);
        model.withdraw();
    }

    private CalibrationRow row() {
        return model.chosen().get().orElseThrow();
    }

    @Test
    void theyStandThereWithWhatRestsOnThem() {
        assertThat(model.rows()).singleElement().satisfies(row -> {
            assertThat(row.kept().id()).isEqualTo(wrong);
            assertThat(row.state()).isEqualTo("in use");
        });
        assertThat(row().consequence())
                .isEqualTo(
                        "Calibration 1 (measuring microphone, gain 30 dB) is in use. The levels of sitting 1 rest on it.");
        assertThat(model.bases())
                .as("there is no other")
                .extracting(LevelBasis::words)
                .containsExactly("no calibration: dB re full scale");
    }

    @Test
    void aWrongOneIsWithdrawnAndTakenBack() {
        AtomicInteger followed = new AtomicInteger();
        model.whenCorrected(followed::incrementAndGet);
        withdraw();

        assertThat(withdrawn()).contains(TYPED);
        assertThat(desk.said()).isEqualTo("Calibration 1 is withdrawn: " + TYPED);
        assertThat(model.reason().get()).isEmpty();
        assertThat(row().consequence())
                .isEqualTo("Calibration 1 (measuring microphone, gain 30 dB) is withdrawn: " + TYPED
                        + ". The levels of sitting 1 rest on it, and are no"
                        + " sound pressure levels until they are analysed anew, without it or by another.");
        assertThat(plucks().withdrawn()).isPresent();
        assertThat(followed).hasValue(1);

        desk.notices().undo();
        assertThat(withdrawn()).isEmpty();
        assertThat(desk.said()).isEqualTo("Calibration 1 is in use again");
        assertThat(plucks().levelUnit()).isEqualTo("dB re 20 µPa by calibration 1");
        assertThat(followed).hasValue(2);
    }

    @Test
    void withoutAReasonNothingIsWithdrawn() {
        model.reason().set(" ");
        model.withdraw();
        assertThat(withdrawn()).isEmpty();
        assertThat(desk.said())
                .isEqualTo("Withdrawing calibration 1: there is no reason; say in a few words what is wrong");
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void usedAgainItCanBeWithdrawnForTheSameReasonAgain() {
        withdraw();
        model.useAgain();
        assertThat(withdrawn()).isEmpty();
        desk.notices().undo();
        assertThat(withdrawn()).contains(TYPED);
    }

    @Test
    void whatWasSaidElsewhereSinceIsNotTakenBack() {
        withdraw();
        desk.lookAtCalibrations().withdrawCalibration().withdraw(wrong, "another gain");
        desk.notices().undo();
        assertThat(withdrawn()).contains("another gain");
        assertThat(desk.said()).startsWith("Calibration 1 stays as it is");
    }

    @Test
    void whatRestsOnItIsAnalysedAnewWithoutIt() {
        withdraw();
        assertThat(model.bases()).extracting(LevelBasis::words).containsExactly("no calibration: dB re full scale");
        model.analyseAnew();

        assertThat(plucks().calibration()).isEmpty();
        assertThat(row().consequence()).endsWith("No sitting's levels rest on it.");
        assertThat(desk.said())
                .startsWith("Analysed sitting 1 anew: 6 plucks in ")
                .contains("; before, 6 plucks in dB by calibration 1, which is withdrawn (" + TYPED + ")")
                .endsWith("Earlier results stay beside it");
        assertThat(desk.notices().latest().get().orElseThrow().undo())
                .as("nothing to go back to")
                .isEmpty();
        assertThat(desk.showSitting().show(sitting).analyses()).hasSize(2);
    }

    @Test
    void orByTheRightOneAndSeveralAtOnce() throws IOException {
        SittingId second = desk.plucks(new ShopNumber("7"), "30 dB", 1.1, Optional.of(wrong))
                .id();
        CalibrationId right = desk.calibration(94);
        withdraw();
        assertThat(model.bases())
                .extracting(LevelBasis::words)
                .containsExactly(
                        "no calibration: dB re full scale",
                        "calibration 2, 2026-03-14 09:26, 94 dB, measuring microphone, gain 30 dB");
        model.basis().set(Optional.of(model.bases().get(1)));
        model.analyseAnew();

        assertThat(plucks().calibration()).contains(right);
        assertThat(desk.showSitting()
                        .show(second)
                        .latest()
                        .findings()
                        .plucks()
                        .orElseThrow()
                        .calibration())
                .contains(right);
        assertThat(desk.said())
                .isEqualTo("Analysed sittings 1, 2 anew, now 6 plucks in dB re 20 µPa by calibration 2. Earlier results"
                        + " stay beside them");
    }

    @Test
    void theOneLookedAtStaysChosenWhenTheyAreReadAnew() throws IOException {
        desk.calibration(94);
        model.refresh();
        model.chosen().set(Optional.of(model.rows().get(1)));
        model.reason().set("half typed");
        model.refresh();
        assertThat(row().kept().id()).isEqualTo(new CalibrationId(2));
        assertThat(model.reason().get()).isEqualTo("half typed");
    }

    @Test
    void whatCameMeanwhileIsOfferedAndWhatWasChosenStaysChosen() throws IOException {
        desk.calibration(94);
        model.refresh();
        assertThat(model.bases()).as("one more than before").hasSize(2);
        model.basis().set(Optional.of(model.bases().get(1)));
        withdraw();
        assertThat(model.basis().get().orElseThrow().words()).startsWith("calibration 2");

        desk.lookAtCalibrations().withdrawCalibration().withdraw(new CalibrationId(2), "another gain");
        model.refresh();
        assertThat(model.basis().get().orElseThrow().words())
                .as("withdrawn, so no longer")
                .isEqualTo("no calibration: dB re full scale");
    }

    @Test
    void ofSeveralTakenBackThatWhichWasAnalysedAgainSinceStaysAndIsNamed() throws IOException {
        SittingId second = desk.plucks(new ShopNumber("7"), "30 dB", 1.1, Optional.of(wrong))
                .id();
        desk.calibration(94);
        CalibrationId third = desk.calibration(104);
        model.refresh();
        model.basis().set(Optional.of(model.bases().get(1)));
        model.analyseAnew();
        desk.reanalyseSitting().reanalyse(second, third, Progress.SILENT);

        desk.notices().undo();
        assertThat(plucks().calibration()).contains(wrong);
        assertThat(desk.said()).endsWith("Sitting 2 stays as it is: analysed again elsewhere since");
    }
}
