package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShelfModel shelf;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        shelf = new ShelfModel(desk.lookAtShelf(), desk.settings(), desk.work(), desk.notices());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void add(String number, Optional<ConstructionKind> construction, String nickname) {
        InstrumentForm form = new InstrumentForm();
        form.construction().set(construction);
        form.line(InstrumentLine.NICKNAME).set(nickname);
        shelf.add(number, form, () -> {});
    }

    @Test
    void aNewInstrumentStandsOnTheShelfAtOnce() {
        add(" 7 ", Optional.of(ConstructionKind.HONEYCOMB_SANDWICH), "the loud one");

        assertThat(shelf.found()).singleElement().satisfies(row -> {
            assertThat(row.instrument().shopNumber()).isEqualTo(new ShopNumber("7"));
            assertThat(row.nature()).isEqualTo("classical guitar, honeycomb-core sandwich");
            assertThat(row.lastSitting(ZoneOffset.UTC)).isEqualTo("no sitting yet");
            assertThat(row.sketch()).isEmpty();
        });
        assertThat(desk.said()).isEqualTo("Instrument 7 stands on the shelf");
    }

    @Test
    void theSameNumberTwiceIsRefusedInWordsAndTheShelfStaysAsItIs() {
        add("7", Optional.empty(), "");
        add("7", Optional.empty(), "");

        assertThat(shelf.found()).hasSize(1);
        assertThat(desk.said()).startsWith("Adding the instrument: ").contains("7");
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void aBlankNumberIsRefusedInWords() {
        add("  ", Optional.empty(), "");

        assertThat(shelf.found()).isEmpty();
        assertThat(desk.said()).startsWith("Adding the instrument: ");
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void everyWordOfASearchMustFit() {
        add("7", Optional.of(ConstructionKind.SOLID), "");
        add("8", Optional.of(ConstructionKind.WOOD_SANDWICH), "river");
        shelf.search().set("classical SANDWICH river");
        assertThat(shelf.found())
                .singleElement()
                .satisfies(
                        row -> assertThat(row.instrument().shopNumber().text()).isEqualTo("8"));
        shelf.search().set("solid river");
        assertThat(shelf.found()).isEmpty();
        shelf.search().set("");
        assertThat(shelf.found()).hasSize(2);
    }

    @Test
    void aShelfReadAnewIsSketchedOnce() {
        ShopNumber number = desk.instrument("9");
        desk.sitting(number, 102, 196, Conditions.UNKNOWN);
        HeldWork work = new HeldWork(desk.notices());
        ShelfModel held = new ShelfModel(desk.lookAtShelf(), desk.settings(), work, desk.notices());
        held.refresh();
        work.work();
        work.deliver();
        held.refresh();
        work.work(); // the sketch of a shelf that is read anew
        work.deliver();

        assertThat(held.found().get(0).sketch()).isEmpty();
        work.finish();
        assertThat(held.found().get(0).sketch()).isNotEmpty();
    }

    @Test
    void theSketchPeaksWhereTheBodyDoes() {
        ShopNumber number = desk.instrument("9");
        desk.sitting(number, 102, 196, Conditions.UNKNOWN);
        shelf.refresh();

        ShelfRow row = shelf.found().get(0);
        assertThat(row.sittings()).hasSize(1);
        int highest =
                row.sketch().indexOf(row.sketch().stream().max(Double::compare).orElseThrow());
        double steps = Math.log(900.0 / 60) / 90;
        double peakHz = 60 * Math.exp(steps * (highest + 0.5));
        assertThat(peakHz).isBetween(196 * Math.exp(-steps), 196 * Math.exp(steps));
    }
}
