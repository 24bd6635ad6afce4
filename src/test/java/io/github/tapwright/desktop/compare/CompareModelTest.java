package io.github.tapwright.desktop.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.desktop.settings.DeskSettings;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.WrittenDown;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompareModelTest {

    @TempDir
    static Path folder;

    private static TestDesk desk;
    private static Sitting before;
    private static Sitting after;
    private static Sitting covered;

    private SettingsModel settings;
    private CompareModel model;

    @BeforeAll
    static void open() throws Exception {
        desk = new TestDesk(folder);
        ShopNumber seven = desk.instrument("7", ConstructionKind.SOLID);
        ShopNumber eight = desk.instrument("8", ConstructionKind.HONEYCOMB_SANDWICH);
        before = desk.sitting(seven, 102, 196, TestDesk.strung(HoleState.OPEN));
        covered = desk.sitting(seven, 102, 190, TestDesk.strung(HoleState.COVERED));
        after = desk.sitting(eight, 102, 215, TestDesk.strung(HoleState.OPEN));
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
        model = new CompareModel(
                desk.listSittings(),
                desk.compareSittings(),
                desk.comparePlayed(),
                settings,
                desk.work(),
                desk.notices(),
                ZoneOffset.UTC);
        model.refresh();
    }

    private void choose(Sitting first, Sitting second) {
        Sides.choose(model, first, second);
    }

    @Test
    void aSittingSetAsideIsNotOffered() {
        Sitting wrong = desk.sitting(before.instrument(), 104, 199, TestDesk.strung(HoleState.OPEN));
        model.refresh();
        assertThat(model.choices()).anyMatch(c -> c.sitting().equals(Optional.of(wrong.id())));

        desk.setAside(wrong.id(), "a neighbour's guitar");
        model.refresh();

        assertThat(model.choices()).isNotEmpty().noneMatch(c -> c.sitting().equals(Optional.of(wrong.id())));
        assertThat(new SittingTitle(ZoneOffset.UTC).of(desk.showSitting().show(wrong.id())))
                .endsWith("set aside: a neighbour's guitar");
    }

    @Test
    void aSittingMovedToAnotherInstrumentIsStillChosenUnderItsNewName() {
        Sitting wrong = desk.sitting(after.instrument(), 102, 197, TestDesk.strung(HoleState.OPEN));
        model.refresh();
        choose(before, wrong);
        desk.lookAtShelf()
                .editSitting()
                .edit(
                        wrong.id(),
                        now -> new WrittenDown(before.instrument(), now.takenAt(), now.conditions()),
                        Progress.SILENT);
        model.refresh();
        assertThat(model.second().get()).hasValueSatisfying(side -> {
            assertThat(side.instrument()).isEqualTo(before.instrument());
            assertThat(model.choices()).contains(side);
        });
        assertThat(model.result().get()).isPresent();
        desk.setAside(wrong.id(), "of no use to the others");
    }

    @Test
    void theShopsOwnWindowDecidesWhetherTheAirWasRight() {
        choose(before, after);
        assertThat(model.conditions()).noneMatch(c -> c.condition().contains("window") && c.worst() != Grade.FINE);

        settings.change(settings.now().get().within(new ShopWindow(50, 60)));
        model.refresh();
        assertThat(model.conditions()).anyMatch(c -> c.condition().contains("window") && c.worst() != Grade.FINE);
    }

    @Test
    void theMakersOwnSpreadOfSettingUpIsCountedWithOnTheScreenAndInItsReport() {
        choose(before, after);
        assertThat(spread()).isEqualTo(SetUpSpread.USUAL);

        SetUpSpread own = SetUpSpread.given(0.001, 0.02, 0.5);
        settings.change(settings.now().get().spreading(Optional.of(own)));
        model.refresh();
        assertThat(spread()).isEqualTo(own);
        assertThat(model.subject())
                .hasValueSatisfying(subject -> assertThat(
                                ((ReportSubject.OfTwo) subject).settings().spread())
                        .contains(own));
    }

    private SetUpSpread spread() {
        return ((Answer.OfTaps) model.result().get().orElseThrow())
                .compared()
                .bench()
                .spread();
    }

    @Test
    void instrumentsStandBeforeTheirSittingsAmongTheChoices() {
        assertThat(model.choices()).hasSize(5);
        assertThat(model.choices().get(0).words()).isEqualTo("7, its latest taps");
        assertThat(model.choices().get(1).words()).isEqualTo("8, its latest taps");
    }

    @Test
    void aTopThatMovedDiffersAndAnAirResonanceThatStayedCannotBeTold() {
        choose(before, after);

        assertThat(model.figures())
                .filteredOn(f -> f.quantity().equals("frequency (Hz)"))
                .extracting(ComparedFigure::what, ComparedFigure::verdict)
                .containsExactly(tuple("main air", "? cannot tell"), tuple("main top", "≠ differs"));
        assertThat(model.sentences().get(0).words()).startsWith("main top is ").contains("Hz higher");
        assertThat(model.traces()).hasSize(2);
        assertThat(model.refuses()).isFalse();
    }

    @Test
    void turnedAboutTheDifferenceTurnsItsSign() {
        choose(before, after);
        model.swap();

        assertThat(model.first().get()).contains(Sides.side(model, after));
        assertThat(model.sentences().get(0).words()).startsWith("main top is ").contains("Hz lower");
    }

    @Test
    void theLatestTapsOfInstrumentsAreComparedWithoutChoosingSittings() {
        model.first().set(Optional.of(Side.latestOf(new ShopNumber("7"))));
        model.second().set(Optional.of(Side.latestOf(new ShopNumber("8"))));

        assertThat(model.result().get()).hasValueSatisfying(r -> {
            assertThat(r.compared().first().instrument().text()).isEqualTo("7");
            assertThat(r.compared().second().id()).isEqualTo(after.id());
        });
    }

    @Test
    void aLaterSittingSetAsideIsToldOfWhereTheLatestWasAskedFor() {
        Sitting wrong = desk.sitting(after.instrument(), 104, 199, TestDesk.strung(HoleState.OPEN));
        desk.setAside(wrong.id(), "the cover had slipped");
        model.first().set(Optional.of(Sides.side(model, before)));
        model.second().set(Optional.of(Side.latestOf(after.instrument())));

        assertThat(model.result().get())
                .hasValueSatisfying(r -> assertThat(r.compared().second()).isEqualTo(after));
        Sentence told = Sentence.warning(
                "Sitting " + wrong.id() + " of instrument 8 left out, set aside: the cover had slipped");
        assertThat(model.sentences()).startsWith(told);
        choose(before, after);
        assertThat(model.sentences()).isNotEmpty().doesNotContain(told);
    }

    @Test
    void aRefusalStandsFirstAndYieldsOnlyToTheMakersOwnReasonWhichStays() {
        choose(before, covered);
        assertThat(model.conditions().get(0).worst()).isEqualTo(Grade.REFUSED);
        assertThat(model.refuses()).isTrue();
        assertThat(model.figures()).allMatch(f -> f.told().equals(Optional.of(Verdict.REFUSED)));
        assertThat(model.figures()).allMatch(f -> f.change95().equals("refused"));

        model.compareDespite("  ");
        assertThat(desk.said()).contains("Write your reason first");
        assertThat(model.despite().get()).isEmpty();

        model.compareDespite("I want to see the hole's share");
        assertThat(model.despite().get()).contains("I want to see the hole's share");
        assertThat(model.figures()).noneMatch(f -> f.told().equals(Optional.of(Verdict.REFUSED)));
        assertThat(model.subject())
                .hasValueSatisfying(
                        s -> assertThat(((ReportSubject.OfTwo) s).settings().despite())
                                .contains("I want to see the hole's share"));

        desk.notices().undo();
        assertThat(model.despite().get()).isEmpty();
        assertThat(model.figures()).allMatch(f -> f.told().equals(Optional.of(Verdict.REFUSED)));
    }

    @Test
    void aReasonDoesNotHoldForOtherSittings() {
        choose(before, covered);
        model.compareDespite("to see");
        model.second().set(Optional.of(Sides.side(model, after)));

        assertThat(model.despite().get()).isEmpty();
        assertThat(model.result().get()).isPresent();
    }

    @Test
    void theSameSittingTwiceIsNoComparison() {
        choose(before, before);

        assertThat(model.result().get()).isEmpty();
        assertThat(desk.faults()).isEmpty();
    }

    @Test
    void bothCurvesAreWrittenAsAPicture() throws Exception {
        choose(before, after);
        Path file = folder.resolve("both.svg");
        model.savePicture(file);

        assertThat(desk.said()).startsWith("Wrote ");
        assertThat(Files.readString(file)).contains("main top");
    }

    @Test
    void groupsOfOneInstrumentEachAreTooFewAndEveryPointIsDrawn() {
        GroupsModel groups = new GroupsModel(desk.compareGroups(), desk.work(), desk.notices());
        groups.refresh();

        assertThat(groups.findings()).extracting(Sentence::words).anyMatch(w -> w.contains("too few to say anything"));
        assertThat(groups.findings())
                .filteredOn(s -> s.words().contains("too few"))
                .hasSize(1);
        assertThat(groups.members())
                .extracting(Sentence::words)
                .anyMatch(w -> w.startsWith("solid tops: 1 instrument, 7"));
        assertThat(groups.members()).extracting(Sentence::words).anyMatch(w -> w.startsWith("sitting " + covered.id()));
        assertThat(groups.picture()).hasValueSatisfying(p -> {
            var points = (io.github.tapwright.chart.PointsPicture) p;
            assertThat(points.panels()).hasSize(2);
            assertThat(points.panels())
                    .allSatisfy(panel -> assertThat(panel.clusters()).allSatisfy(c -> {
                        assertThat(c.points()).hasSize(1);
                        assertThat(c.mean()).isEmpty();
                    }));
        });
        groups.shown().set(Shown.CURVES);
        assertThat(groups.picture()).isPresent();
        groups.shown().set(Shown.PLUCKS);
        assertThat(groups.picture()).isEmpty();
    }
}
