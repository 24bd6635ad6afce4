package io.github.tapwright.desktop.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.settings.DeskSettings;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Sitting;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimelineModelTest {

    private static final int SITTINGS = 5;

    @TempDir
    static Path folder;

    private static TestDesk desk;
    private static ShopNumber drifting;
    private static ShopNumber untouched;
    private static Sitting covered;

    private SettingsModel settings;
    private TimelineModel model;

    @BeforeAll
    static void open() throws Exception {
        desk = new TestDesk(folder);
        drifting = desk.instrument("7");
        untouched = desk.instrument("8");
        for (int month = 1; month <= SITTINGS; month++) {
            desk.sitting(drifting, on(month), 102, 190 + 4.0 * month, TestDesk.strung(HoleState.OPEN));
        }
        covered = desk.sitting(drifting, on(SITTINGS + 1), 102, 190, TestDesk.strung(HoleState.COVERED));
    }

    private static Optional<Moment> on(int month) {
        return Optional.of(Moment.on(LocalDate.of(2025, month, 10), ZoneOffset.UTC));
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @BeforeEach
    void fresh() {
        desk.notices().dismiss();
        settings = desk.settings();
        settings.change(DeskSettings.FIRST);
        model = on(desk.work());
        model.refresh();
    }

    private TimelineModel on(Work work) {
        return new TimelineModel(
                desk.listInstruments(), desk.followInstrument(), settings, work, desk.notices(), ZoneOffset.UTC);
    }

    @Test
    void aHistoryNobodyWaitsForAnyMoreIsNotShown() {
        HeldWork work = new HeldWork(desk.notices());
        TimelineModel held = on(work);

        held.open(drifting);
        work.work();
        held.instrument().set(Optional.empty());
        work.deliver();

        assertThat(held.history().get()).isEmpty();
    }

    @Test
    void whoComesBackToAnInstrumentSeesItsHistoryAndNoGapFromTheTimeBetween() {
        HeldWork work = new HeldWork(desk.notices());
        TimelineModel held = on(work);
        List<Optional<ShopNumber>> shown = new ArrayList<>();
        held.history().addListener((o, before, after) -> shown.add(after.map(History::instrument)));

        held.open(untouched);
        held.open(drifting);
        work.work(); // finds that it was overtaken
        held.open(untouched);
        work.work();
        held.open(drifting);
        work.finish();

        assertThat(held.sittings()).hasSize(SITTINGS);
        assertThat(shown).containsExactly(Optional.of(drifting));
    }

    @Test
    void aHistoryIsThatOfTheHumidityTheShopWasHeldAtWhenItWasAskedFor() {
        HeldWork work = new HeldWork(desk.notices());
        TimelineModel held = on(work);
        held.open(drifting);
        settings.change(settings.now().get().within(new ShopWindow(60, 70)));
        work.finish();

        assertThat(held.history().get()).isEqualTo(on(drifting, Optional.empty()));
    }

    @Test
    void theMakersOwnSpreadOfSettingUpIsCountedWithOnTheScreenAndInItsReport() {
        Optional<SetUpSpread> own = Optional.of(SetUpSpread.given(0.001, 0.02, 0.5));
        settings.change(settings.now().get().spreading(own));
        model.open(drifting);

        assertThat(model.history().get()).isEqualTo(on(drifting, own)).isNotEqualTo(on(drifting, Optional.empty()));
        assertThat(model.subject()).contains(new ReportSubject.OfHistory(drifting, own, ShopWindow.USUAL));
    }

    private static Optional<History> on(ShopNumber number, Optional<SetUpSpread> spread) {
        return Optional.of(desk.followInstrument().follow(number, spread, ShopWindow.USUAL));
    }

    @Test
    void aHistoryHasItsPictureItsDriftsAndItsSittings() {
        model.open(drifting);

        assertThat(model.instruments()).containsExactly(drifting, untouched);
        assertThat(model.sittings()).hasSize(SITTINGS);
        assertThat(model.picture()).hasValueSatisfying(p -> {
            assertThat(p.humidity()).hasSize(SITTINGS);
            assertThat(p.panels()).isNotEmpty();
        });
        DriftRow top = model.drifts().stream()
                .filter(d -> d.figure().equals("main top, frequency (Hz)"))
                .findFirst()
                .orElseThrow();
        assertThat(top.sittings()).isEqualTo("5 of 5");
        assertThat(top.fromTo()).matches("19[34]\\.\\d → 2(09|10)\\.\\d");
        // Five sittings that rise without exception have an exact two-sided p of 2/5! = 0.017 [Kendall], asked beside
        // others.
        assertThat(top.correctedProbability()).isEqualTo("0.017");
        assertThat(top.verdict()).isEqualTo("? cannot tell");
        assertThat(model.sentences())
                .extracting(Sentence::words)
                .anyMatch(w -> w.startsWith("perhaps main top, frequency: rises"));
    }

    @Test
    void whatWasLeftOutIsSaidWithItsReason() {
        model.open(drifting);

        assertThat(model.sentences())
                .contains(Sentence.warning("sitting " + covered.id()
                        + " left out: the soundhole was covered, which makes another body of it"));
    }

    @Test
    void anInstrumentWithoutSittingsSaysSoInsteadOfShowingAnEmptyPicture() {
        model.open(untouched);

        assertThat(model.history().get()).isPresent();
        assertThat(model.picture()).isEmpty();
        assertThat(model.sentences().get(0).words()).startsWith("There is no sitting");
        model.savePicture(folder.resolve("none.svg"));
        assertThat(desk.said()).startsWith("There is nothing to draw yet");
        assertThat(folder.resolve("none.svg")).doesNotExist();
    }

    @Test
    void anotherInstrumentTakesTheFirstOnesPlaceEntirely() {
        model.open(drifting);
        model.open(untouched);

        assertThat(model.sittings()).isEmpty();
        assertThat(model.drifts()).isEmpty();
        assertThat(model.subject())
                .hasValueSatisfying(s ->
                        assertThat(((ReportSubject.OfHistory) s).instrument()).isEqualTo(untouched));
    }

    @Test
    void thePictureIsWritten() throws Exception {
        model.open(drifting);
        Path file = folder.resolve("history.svg");
        model.savePicture(file);

        assertThat(desk.said()).startsWith("Wrote ");
        assertThat(Files.readString(file)).contains("Instrument 7 over time");
    }
}
