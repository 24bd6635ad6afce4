package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.conditions.TypedLine;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MoveSittingModelTest {

    private static final ShopNumber RIGHT = new ShopNumber("34");
    private static final ShopNumber WRONG = new ShopNumber("58");

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShelfModel shelf;
    private CorrectSittingModel model;
    private Sitting before;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        shelf = new ShelfModel(desk.lookAtShelf(), desk.settings(), desk.work(), desk.notices());
        model = shelf.correctSitting();
        desk.instrument("34");
        before = desk.sitting(desk.instrument("58"), 102, 196, TestDesk.strung(HoleState.OPEN));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Sitting kept() {
        return desk.showSitting().show(before.id());
    }

    private EditSitting edit() {
        return desk.lookAtShelf().editSitting();
    }

    private void moveTo(ShopNumber instrument) {
        model.open(before.id());
        model.instrument().set(Optional.of(instrument));
        model.save();
    }

    @Test
    void theFormOffersEveryInstrumentOfTheShelf() {
        model.open(before.id());
        assertThat(model.instruments()).containsExactly(Optional.of(RIGHT), Optional.of(WRONG));
        assertThat(model.instrument().get()).contains(WRONG);
        model.instrument().set(Optional.of(RIGHT));
        assertThat(model.changes().get())
                .isEqualTo("Will change: instrument 34 (was 58). Recordings, results and names go with it to that"
                        + " instrument.");
        assertThat(kept()).isEqualTo(before);
    }

    @Test
    void theSittingStandsWithTheOtherInstrumentAndNothingIsComputedAnew() {
        moveTo(RIGHT);

        assertThat(kept().instrument()).isEqualTo(RIGHT);
        assertThat(kept().recordings()).isEqualTo(before.recordings());
        assertThat(kept().analyses()).isEqualTo(before.analyses());
        assertThat(desk.said()).isEqualTo("Corrected sitting 1: instrument 34 (was 58)");
        assertThat(shelf.found()).extracting(row -> row.sittings().size()).containsExactly(1, 0);
        assertThat(edit().corrected(before.id()))
                .extracting(WrittenDown::instrument)
                .containsExactly(WRONG);
    }

    @Test
    void aMoveIsTakenBack() {
        moveTo(RIGHT);
        desk.notices().undo();
        assertThat(kept().instrument()).isEqualTo(WRONG);
        assertThat(desk.said()).isEqualTo("Sitting 1 is written down as it was before");
        assertThat(shelf.found()).extracting(row -> row.sittings().size()).containsExactly(0, 1);
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void whatWasMovedOnSinceStaysThere() {
        ShopNumber other = desk.instrument("60");
        model.open(before.id());
        model.form().line(TypedLine.GAIN).set("30 dB");
        model.instrument().set(Optional.of(RIGHT));
        model.save();
        edit().edit(before.id(), now -> new WrittenDown(other, now.takenAt(), now.conditions()), Progress.SILENT);
        desk.notices().undo();
        assertThat(kept().instrument()).isEqualTo(other);
        assertThat(kept().conditions().microphone().gain()).as("taken back").isEmpty();
        assertThat(desk.said())
                .isEqualTo(
                        "Sitting 1 is written down as it was before, but for what was corrected again since: that stays");
    }
}
