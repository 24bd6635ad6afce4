package io.github.tapwright.desktop.response;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import io.github.tapwright.tap.Strike;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResponseModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private ResponseModel response;
    private Sitting sitting;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        response = on(desk.work());
        ShopNumber number = desk.instrument("7");
        sitting = desk.sitting(number, 102, 196, Conditions.UNKNOWN);
        response.open(sitting.id());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private List<Optional<String>> names() {
        return response.resonances().stream().map(ShownResonance::name).toList();
    }

    @Test
    void showsWhatTheArchiveHolds() {
        assertThat(response.sitting().get()).contains(sitting);
        assertThat(names()).containsExactly(Optional.of("main air"), Optional.of("main top"));
        assertThat(response.traces())
                .singleElement()
                .satisfies(trace -> assertThat(trace.marks()).hasSize(2));
    }

    @Test
    void aNameIsKeptAndCanBeTakenBack() {
        response.name(response.resonances().get(0), " low one ");
        assertThat(names()).containsExactly(Optional.of("low one"), Optional.of("main top"));
        assertThat(desk.showSitting().show(sitting.id()).givenNames()).hasSize(1);

        desk.notices().undo();
        assertThat(names()).containsExactly(Optional.of("main air"), Optional.of("main top"));
    }

    @Test
    void aStrikeSetAsideLeavesTheAnalysisAndComesBackOnUndo() {
        Strike third = strikes().get(2);
        response.toggle(third);
        assertThat(strikes()).filteredOn(Strike::used).hasSize(4);
        assertThat(curveStrikes()).isEqualTo(4);
        assertThat(desk.said()).startsWith("Set the strike aside");

        desk.notices().undo();
        assertThat(strikes()).filteredOn(Strike::used).hasSize(5);
        assertThat(desk.showSitting().show(sitting.id()).analyses())
                .as("no analysis is ever replaced")
                .hasSize(3);
    }

    @Test
    void whatIsTakenBackBelongsToItsOwnSittingWhateverIsOnTheScreenByThen() {
        Sitting other = desk.sitting(desk.instrument("8"), 98, 188, Conditions.UNKNOWN);
        response.name(response.resonances().get(0), "low one");
        response.open(other.id());
        desk.notices().undo();

        assertThat(response.sitting().get())
                .as("stays on the screen")
                .map(Sitting::id)
                .contains(other.id());
        assertThat(desk.showSitting().show(other.id()).givenNames()).isEmpty();
        Sitting renamed = desk.showSitting().show(sitting.id());
        assertThat(renamed.resonances(renamed.latest()).get(0).name()).contains("main air");

        response.open(sitting.id());
        response.toggle(strikes().get(2));
        response.open(other.id());
        desk.notices().undo();
        assertThat(desk.showSitting().show(other.id()).analyses()).hasSize(1);
        assertThat(desk.showSitting().show(sitting.id()).analyses()).hasSize(3);
    }

    @Test
    void whatWasCorrectedMeanwhileIsShownOnceTheScreenIsReadAnew() {
        Sitting other = desk.sitting(desk.instrument("8"), 98, 188, Conditions.UNKNOWN);
        response.lay(other.id(), true);
        for (Sitting corrected : List.of(sitting, other)) {
            desk.lookAtShelf()
                    .editSitting()
                    .edit(
                            corrected.id(),
                            now -> new WrittenDown(now.instrument(), now.takenAt(), TestDesk.strung(HoleState.UNKNOWN)),
                            Progress.SILENT);
        }
        response.refresh();
        assertThat(response.sitting().get()).contains(desk.showSitting().show(sitting.id()));
        assertThat(response.overlays()).containsExactly(desk.showSitting().show(other.id()));
    }

    private List<Strike> strikes() {
        return response.sitting()
                .get()
                .orElseThrow()
                .latest()
                .taps()
                .orElseThrow()
                .strikes();
    }

    private int curveStrikes() {
        return response.traces().get(0).curve().strikeCount();
    }

    private ResponseModel on(Work work) {
        return new ResponseModel(
                desk.listSittings(),
                desk.showSitting(),
                desk.nameResonance(),
                desk.reanalyseSitting(),
                work,
                desk.notices(),
                ZoneOffset.UTC);
    }

    @Test
    void whatIsTakenOffBeforeItWasReadStaysOffAndNothingLiesThereTwice() {
        Sitting other = desk.sitting(desk.instrument("8"), 98, 188, Conditions.UNKNOWN);
        HeldWork work = new HeldWork(desk.notices());
        ResponseModel model = on(work);

        model.lay(other.id(), true);
        model.lay(other.id(), false);
        work.finish();
        assertThat(model.overlays()).as("off again").isEmpty();

        model.lay(other.id(), true);
        model.lay(other.id(), false);
        model.lay(other.id(), true);
        work.finish();
        assertThat(model.overlays()).extracting(Sitting::id).containsExactly(other.id());
    }

    @Test
    void aSittingIsNotLaidOverItselfAlthoughItWasAskedForWhileItWasRead() {
        HeldWork work = new HeldWork(desk.notices());
        ResponseModel model = on(work);

        model.open(sitting.id());
        model.lay(sitting.id(), true);
        work.finish();

        assertThat(model.sitting().get()).isPresent();
        assertThat(model.overlays()).isEmpty();
    }

    @Test
    void theSittingAskedForLastIsShownAndNoneBeforeIt() {
        Sitting other = desk.sitting(desk.instrument("8"), 98, 188, Conditions.UNKNOWN);
        HeldWork work = new HeldWork(desk.notices());
        ResponseModel model = on(work);

        model.open(sitting.id());
        work.work();
        model.open(other.id());
        work.deliver();
        assertThat(model.sitting().get()).as("overtaken").isEmpty();
        work.finish();
        assertThat(model.sitting().get()).map(Sitting::id).contains(other.id());
    }

    @Test
    void otherSittingsLieOverAndComeOffAgain() {
        Sitting other = desk.sitting(desk.instrument("8"), 98, 188, Conditions.UNKNOWN);
        response.refresh();
        assertThat(response.choices()).hasSize(2);

        response.lay(other.id(), true);
        response.lay(other.id(), true);
        assertThat(response.traces()).hasSize(2);
        response.lay(other.id(), false);
        assertThat(response.traces()).hasSize(1);
    }

    @Test
    void whatIsSetAsideElsewhereComesOffAndLiesThereAgainOnceItIsUsedAgain() {
        Sitting other = desk.sitting(new ShopNumber("7"), 110, 205, Conditions.UNKNOWN);
        response.lay(other.id(), true);
        desk.setAside(other.id(), "the cover had slipped");
        response.refresh();
        assertThat(response.overlays()).isEmpty();
        assertThat(response.choices()).extracting(s -> s.id()).containsExactly(sitting.id());

        desk.lookAtShelf().setSittingAside().takeBack(other.id());
        response.refresh();
        assertThat(response.overlays()).extracting(Sitting::id).containsExactly(other.id());
    }

    @Test
    void theSittingLookedAtIsMarkedOnceItIsSetAside() {
        desk.setAside(sitting.id(), "the cover had slipped");
        response.refresh();
        assertThat(response.sitting().get().map(response::title).orElseThrow())
                .endsWith(", set aside: the cover had slipped");
    }

    @Test
    void aSittingDoesNotLieOverItself() {
        response.lay(sitting.id(), true);
        assertThat(response.overlays()).isEmpty();
    }

    @Test
    void thePictureIsWrittenWhereAskedAndAnUnknownEndingIsRefusedInWords() {
        Path picture = folder.resolve("curve.svg");
        response.savePicture(picture);
        assertThat(picture).isNotEmptyFile();
        response.savePicture(folder.resolve("curve.docx"));
        assertThat(desk.said()).contains(".png or .svg");
        assertThat(Files.exists(folder.resolve("curve.docx"))).isFalse();
    }
}
