package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetAsideModelTest {

    private static final String SLIPPED = "the cover had slipped";

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShelfModel shelf;
    private SetAsideModel model;
    private SittingId id;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        shelf = shelf(desk.work());
        model = shelf.setAside();
        ShopNumber number = desk.instrument("7");
        id = desk.sitting(number, 102, 196, TestDesk.strung(HoleState.OPEN)).id();
    }

    private ShelfModel shelf(Work work) {
        return new ShelfModel(desk.lookAtShelf(), desk.settings(), work, desk.notices());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Optional<String> kept() {
        return desk.showSitting().show(id).setAside().map(OutOfUse::reason);
    }

    private void setAside(String reason) {
        shelf.setAside(id);
        model.reason().set(reason);
        model.save();
    }

    @Test
    void theFormSaysWhatItMeansAndAsksWhy() {
        shelf.setAside(id);
        assertThat(shelf.correcting().get()).containsSame(model);
        assertThat(model.title().get()).isEqualTo("Set aside sitting 1 of instrument 7, for taps");
        assertThat(model.reason().get()).isEmpty();
        assertThat(model.changes().get()).contains("nothing beyond itself uses it");
        assertThat(kept()).isEmpty();
    }

    @Test
    void aSittingIsSetAsideAndTheShelfShowsItWithTheReason() {
        AtomicInteger followed = new AtomicInteger();
        shelf.whenCorrected(followed::incrementAndGet);
        setAside(SLIPPED);

        assertThat(model.open().get()).isFalse();
        assertThat(kept()).contains(SLIPPED);
        assertThat(desk.said()).isEqualTo("Sitting 1 is set aside: the cover had slipped");
        assertThat(shelf.found().get(0).sittings().get(0).setAside().map(OutOfUse::reason))
                .contains(SLIPPED);
        assertThat(followed).hasValue(1);

        desk.notices().undo();
        assertThat(kept()).isEmpty();
        assertThat(desk.said()).isEqualTo("Sitting 1 is in use again");
        assertThat(followed).hasValue(2);
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void withoutAReasonItIsRefusedAtTheForm() {
        setAside("  ");
        assertThat(model.refusal().get()).isEqualTo("Not kept: there is no reason; say in a few words what is wrong");
        assertThat(model.open().get()).isTrue();
        assertThat(kept()).isEmpty();
        model.reason().set(SLIPPED);
        assertThat(model.refusal().get()).as("typing answers").isEmpty();
        model.save();
        assertThat(kept()).contains(SLIPPED);
    }

    @Test
    void usedAgainItCanBeSetAsideForTheSameReasonAgain() {
        setAside(SLIPPED);
        shelf.useAgain(id);
        assertThat(kept()).isEmpty();
        assertThat(desk.said()).isEqualTo("Sitting 1 is in use again");

        desk.notices().undo();
        assertThat(kept()).contains(SLIPPED);
        assertThat(desk.said()).isEqualTo("Sitting 1 is set aside: the cover had slipped");
    }

    @Test
    void whatWasSaidElsewhereSinceIsNotTakenBack() {
        setAside(SLIPPED);
        desk.setAside(id, "a neighbour's guitar");
        desk.notices().undo();
        assertThat(kept()).contains("a neighbour's guitar");
        assertThat(desk.said()).isEqualTo("Sitting 1 stays as it is: it was set aside or taken back elsewhere since");
    }

    @Test
    void aReasonGivenElsewhereStandsInTheFormAndComesBackOnUndo() {
        desk.setAside(id, "a neighbour's guitar");
        shelf.setAside(id);
        assertThat(model.reason().get()).isEqualTo("a neighbour's guitar");
        model.reason().set(SLIPPED);
        model.save();
        assertThat(kept()).contains(SLIPPED);
        desk.notices().undo();
        assertThat(kept()).contains("a neighbour's guitar");
    }

    @Test
    void saidTwiceInARowItIsToldOnceAndCanStillBeTakenBack() {
        HeldWork work = new HeldWork(desk.notices());
        ShelfModel held = shelf(work);
        held.setAside(id);
        work.finish();
        held.setAside().reason().set(SLIPPED);
        held.setAside().save();
        held.setAside().save();
        work.finish();
        assertThat(kept()).contains(SLIPPED);
        assertThat(held.setAside().open().get()).isFalse();
        desk.notices().undo();
        work.finish();
        assertThat(kept()).isEmpty();
    }

    @Test
    void aReasonTypedComesBackAfterLeavingByMistake() {
        shelf.setAside(id);
        model.leave();
        assertThat(desk.said()).as("nothing to lose").isEmpty();
        shelf.setAside(id);
        model.reason().set(SLIPPED);
        model.leave();
        assertThat(kept()).isEmpty();
        desk.notices().undo();
        assertThat(model.open().get()).isTrue();
        assertThat(model.reason().get()).isEqualTo(SLIPPED);
    }

    @Test
    void oneFormIsOpenAtATime() {
        shelf.correct(id);
        shelf.setAside(id);
        assertThat(model.open().get()).isFalse();
        assertThat(desk.said()).isEqualTo("Finish the form on the shelf, or leave it, first");
    }
}
