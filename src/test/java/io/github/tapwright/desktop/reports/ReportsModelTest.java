package io.github.tapwright.desktop.reports;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.report.ReportKind;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.synthesis.FingerboardRun;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportsModelTest {

    @TempDir
    Path folder;

    private TestDesk desk;
    private Sitting before;
    private Sitting after;
    private SettingsModel settings;
    private ReportsModel model;
    private ShopModel shop;

    @BeforeEach
    void open() throws Exception {
        desk = new TestDesk(folder);
        var seven = desk.instrument("7");
        before = desk.sitting(seven, 102, 196, TestDesk.strung(HoleState.OPEN));
        after = desk.sitting(seven, 102, 205, TestDesk.strung(HoleState.OPEN));
        settings = desk.settings();
        model = new ReportsModel(desk.makeReports(), settings, desk.clock(), desk.work(), desk.notices());
        shop = new ShopModel(desk.editShop(), desk.work(), desk.notices());
        model.refresh();
        shop.refresh();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private ReportSubject two(Optional<String> despite) {
        return new ReportSubject.OfTwo(
                after.id(), before.id(), new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, despite));
    }

    @Test
    void nothingIsMadeBeforeASittingIsChosen() {
        assertThat(model.ready()).isFalse();
        assertThat(desk.said()).isEqualTo("Choose a sitting first");

        model.make(folder.resolve("none.html"));
        assertThat(folder.resolve("none.html")).doesNotExist();
        assertThat(model.made()).isEmpty();
    }

    @Test
    void aComparisonComesPreparedFromAnotherScreenAndIsMadeWithTheShopsName() throws Exception {
        shop.name().set("Workshop by the Mill");
        shop.address().set("1 Mill Lane\nMilltown");
        shop.keep();
        model.prepare(two(Optional.of("only to see")));

        assertThat(model.form().about().get()).isEqualTo(About.TWO);
        assertThat(model.form().despite().get()).isEqualTo("only to see");
        assertThat(model.form().fileName()).isEqualTo("guitar-7-sitting-" + after.id() + "-client.pdf");
        Path file = folder.resolve("two.html");
        model.make(file);

        assertThat(desk.said()).isEqualTo("Wrote " + file);
        assertThat(model.made()).containsExactly(file);
        assertThat(Files.readString(file)).contains("Workshop by the Mill", "Milltown", "main top is");
    }

    @Test
    void notesAreSetAgainstNotesAndTapsAgainstTaps() throws Exception {
        var seven = new ShopNumber("7");
        List<Fret> string =
                IntStream.rangeClosed(0, 4).mapToObj(f -> new Fret(3, f)).toList();
        Sitting dull = desk.notes(seven, new FingerboardRun(string, 1.6));
        Sitting even = desk.notes(seven, new FingerboardRun(string, 1.6));
        model.refresh();
        model.prepare(two(Optional.empty()));
        assertThat(model.alike()).extracting(SittingChoice::id).containsExactlyInAnyOrder(before.id(), after.id());

        model.form().sitting().set(choice(even));
        assertThat(model.alike()).extracting(SittingChoice::id).containsExactlyInAnyOrder(dull.id(), even.id());
        assertThat(model.form().against().get()).as("taps no longer fit").isEmpty();

        model.form().against().set(choice(dull));
        Path file = folder.resolve("notes.html");
        model.make(file);
        assertThat(desk.said()).isEqualTo("Wrote " + file);
        assertThat(Files.readString(file)).contains("Compared with sitting " + dull.id(), "the early decay of notes");
    }

    private Optional<SittingChoice> choice(Sitting sitting) {
        return model.sittings().stream()
                .filter(s -> s.id().equals(sitting.id()))
                .findFirst();
    }

    @Test
    void aPdfForTheWorkshopIsWrittenUnderANameThatGetsItsEnding() throws Exception {
        model.prepare(new ReportSubject.OfSitting(before.id()));
        model.form().kind().set(ReportKind.WORKSHOP);
        model.make(folder.resolve("workshop"));

        Path file = folder.resolve("workshop.pdf");
        assertThat(model.made()).containsExactly(file);
        assertThat(new String(Files.readAllBytes(file), 0, 5, StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
    }

    @Test
    void theMakersOwnSpreadOfSettingUpIsCountedWithInAReportOfOneSittingToo() throws Exception {
        settings.change(settings.now().get().spreading(Optional.of(SetUpSpread.given(0.0012, 0.02, 0.5))));
        model.prepare(new ReportSubject.OfSitting(before.id()));
        model.form().kind().set(ReportKind.WORKSHOP);
        Path file = folder.resolve("own.html");
        model.make(file);

        assertThat(Files.readString(file))
                .contains("0.12 % of frequency")
                .contains("0.5 dB of level")
                .contains("as given");
    }

    @Test
    void anotherEndingIsRefusedInWords() {
        model.prepare(new ReportSubject.OfSitting(before.id()));
        model.make(folder.resolve("report.doc"));

        assertThat(desk.said()).startsWith("Making the report: ").contains(".pdf");
        assertThat(model.made()).isEmpty();
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void theShopsNameCanBeTakenBackAndWhatIsTypedOutlivesALookElsewhere() {
        shop.name().set("First name");
        shop.keep();
        shop.name().set("Second name");
        shop.keep();
        desk.notices().undo();
        assertThat(shop.name().get()).isEqualTo("First name");

        shop.name().set("half a na");
        shop.refresh();
        assertThat(shop.name().get()).isEqualTo("half a na");
        assertThat(desk.editShop().show().name()).contains("First name");
    }

    @Test
    void aPictureThatIsNoneIsRefusedAndTheShopStaysAsItWas() throws Exception {
        Path text = Files.writeString(folder.resolve("emblem.png"), "no picture at all");
        shop.usePicture(text);

        assertThat(desk.said()).startsWith("Keeping the shop's name: ");
        assertThat(shop.picture().get()).isEqualTo("no picture");
        assertThat(desk.faults()).isEmpty();

        Path svg = Files.writeString(
                folder.resolve("emblem.svg"),
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40\" height=\"40\"><circle cx=\"20\" cy=\"20\" r=\"18\"/></svg>");
        shop.usePicture(svg);
        assertThat(shop.picture().get()).isEqualTo("emblem.svg");
        shop.withoutPicture();
        assertThat(shop.picture().get()).isEqualTo("no picture");
    }
}
