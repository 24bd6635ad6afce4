package io.github.tapwright.desktop.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.sitting.Conditions;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CorrectInstrumentModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private ShelfModel shelf;
    private CorrectInstrumentModel model;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        shelf = new ShelfModel(desk.lookAtShelf(), desk.settings(), desk.work(), desk.notices());
        model = shelf.correctInstrument();
        desk.instrument("7", ConstructionKind.SOLID);
        shelf.refresh();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Instrument kept() {
        return desk.listInstruments().list().get(0);
    }

    private void type(InstrumentLine line, String text) {
        model.form().line(line).set(text);
    }

    @Test
    void aSlipInTheConstructionIsCorrectedToldAndTakenBack() {
        Instrument before = kept();
        model.open(before);
        assertThat(model.form().construction().get()).contains(ConstructionKind.SOLID);
        assertThat(model.changes().get()).isEqualTo("Nothing is changed yet.");
        model.form().construction().set(Optional.of(ConstructionKind.WOOD_SANDWICH));
        type(InstrumentLine.CORE, "balsa");
        type(InstrumentLine.CORE_MM, "1,6");
        assertThat(model.changes().get())
                .isEqualTo("Will change: soundboard wood-core sandwich (was solid); core balsa (was not written down);"
                        + " thickness of the core 1.6 mm (was not written down).");
        model.save();

        assertThat(model.open().get()).isFalse();
        assertThat(kept().construction().kind()).contains(ConstructionKind.WOOD_SANDWICH);
        assertThat(kept().construction().core().thicknessMm()).contains(1.6);
        assertThat(shelf.found().get(0).nature()).contains("wood-core sandwich");
        assertThat(desk.said())
                .isEqualTo("Corrected instrument 7: soundboard wood-core sandwich (was solid); core balsa (was not"
                        + " written down); thickness of the core 1.6 mm (was not written down)");

        desk.notices().undo();
        assertThat(kept()).isEqualTo(before);
        assertThat(shelf.found().get(0).nature()).contains("solid");
        assertThat(desk.said()).isEqualTo("Instrument 7 is written down as it was before");
    }

    @Test
    void everythingTypedIsKeptAndEmptiedAgain() {
        Instrument bare = kept();
        model.open(bare);
        model.form().kind().set(InstrumentKind.STEEL_STRING);
        model.form().construction().set(Optional.of(ConstructionKind.OTHER));
        for (InstrumentLine line : InstrumentLine.values()) {
            type(line, line.asked().endsWith("(mm)") ? "12" : "6");
        }
        type(InstrumentLine.SCALE, "650.5");
        type(InstrumentLine.SOUNDHOLE, "85");
        type(InstrumentLine.NOTES, "first line\nsecond line");
        model.save();
        Instrument full = kept();
        assertThat(InstrumentForm.written(full))
                .allSatisfy(written ->
                        assertThat(written.words()).as(written.name()).isPresent());
        assertThat(full.body().stringCount()).contains(6);
        assertThat(desk.said()).endsWith("; and 11 more");

        model.open(full);
        model.save();
        assertThat(desk.said()).isEqualTo("Nothing was changed");
        model.open(full);
        model.form().kind().set(bare.kind());
        model.form().construction().set(bare.construction().kind());
        for (InstrumentLine line : InstrumentLine.values()) {
            type(line, "");
        }
        model.save();
        assertThat(kept()).isEqualTo(bare);
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void whatCannotBeIsRefusedAtTheFormAndNothingTypedIsLost() {
        Instrument before = kept();
        model.open(before);
        type(InstrumentLine.CORE, "balsa");
        assertThat(model.changes().get()).isEmpty();
        model.save();
        assertThat(model.refusal().get()).startsWith("Not kept: a solid top has one layer only");
        type(InstrumentLine.CORE, "");
        assertThat(model.refusal().get()).as("answered").isEmpty();
        type(InstrumentLine.STRING_COUNT, "6.5");
        model.save();
        assertThat(model.refusal().get()).contains("\"6.5\" is not a whole number");
        type(InstrumentLine.STRING_COUNT, "6");
        type(InstrumentLine.SCALE, "65");
        model.save();
        assertThat(model.refusal().get()).contains("the scale length in mm must lie between 300 and 900, was 65");
        assertThat(model.open().get()).isTrue();
        assertThat(model.form().line(InstrumentLine.SCALE).get()).isEqualTo("65");
        assertThat(kept()).isEqualTo(before);
    }

    /** Every entry by itself: the scale too, which stands in the same part as the number of strings. */
    @Test
    void whatWasCorrectedElsewhereMeanwhileStays() {
        Instrument before = kept();
        model.open(before);
        desk.lookAtShelf().editInstrument().edit(before.shopNumber(), now -> withScale(now, 650));
        type(InstrumentLine.STRING_COUNT, "6");
        model.save();
        assertThat(kept().body().scaleLengthMm()).contains(650.0);
        assertThat(kept().body().stringCount()).contains(6);
        assertThat(desk.said()).isEqualTo("Corrected instrument 7: number of strings 6 (was not written down)");
    }

    @Test
    void takenBackOnlyTheCorrectionItselfIs() {
        Instrument before = kept();
        model.open(before);
        type(InstrumentLine.STRING_COUNT, "6");
        model.save();
        desk.lookAtShelf().editInstrument().edit(before.shopNumber(), now -> withNickname(now, "the loud one"));
        desk.notices().undo();
        assertThat(kept()).isEqualTo(withNickname(before, "the loud one"));
    }

    @Test
    void anEntryThatWasCorrectedAgainSinceStays() {
        Instrument before = kept();
        model.open(before);
        type(InstrumentLine.SCALE, "640");
        type(InstrumentLine.NICKNAME, "the soft one");
        model.save();
        desk.lookAtShelf().editInstrument().edit(before.shopNumber(), now -> withScale(now, 650));
        desk.notices().undo();
        assertThat(kept()).isEqualTo(withScale(before, 650));
        assertThat(desk.said())
                .isEqualTo(
                        "Instrument 7 is written down as it was before, but for what was corrected again since: that stays");
    }

    private static Instrument withNickname(Instrument of, String nickname) {
        return new Instrument(
                of.shopNumber(), of.kind(), of.body(), of.construction(), Optional.of(nickname), of.notes());
    }

    private static Instrument withScale(Instrument of, double scaleLengthMm) {
        Body body = new Body(Optional.of(scaleLengthMm), Optional.empty(), Optional.empty(), Optional.empty());
        return new Instrument(of.shopNumber(), of.kind(), body, of.construction(), of.nickname(), of.notes());
    }

    @Test
    void oneFormIsOpenAtATime() {
        shelf.correct(kept());
        assertThat(shelf.isCorrecting().get()).isTrue();
        shelf.correct(
                desk.sitting(kept().shopNumber(), 102, 196, Conditions.UNKNOWN).id());
        assertThat(desk.said()).isEqualTo("Finish the form on the shelf, or leave it, first");
        assertThat(shelf.correcting().get()).containsSame(model);
        model.leave();
        assertThat(shelf.isCorrecting().get()).isFalse();
    }
}
