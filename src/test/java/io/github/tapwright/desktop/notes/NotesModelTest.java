package io.github.tapwright.desktop.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.desktop.NotesDesk;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.desktop.work.DirectWork;
import io.github.tapwright.desktop.work.Notice;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.FindTaps;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.Stretch;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The notes' model without a toolkit, on a real archive and real recordings. */
class NotesModelTest {

    @TempDir
    static Path folder;

    private static NotesDesk desk;
    private static Sitting run;
    private static Sitting plucks;

    private final Notices notices = new Notices(failure -> {
        throw new AssertionError(failure);
    });
    private PlaybackModel playback;
    private NotesModel model;

    @BeforeAll
    static void fill() throws IOException {
        desk = NotesDesk.in(folder);
        run = desk.addRun();
        plucks = desk.addPlucks();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @BeforeEach
    void look() {
        desk.played.clear();
        DirectWork work = new DirectWork(notices);
        playback = new PlaybackModel(desk.output(), work, notices, Runnable::run);
        model = new NotesModel(
                new NotesModel.UseCases(
                        desk.listSittings(),
                        desk.showSitting(),
                        new FindTaps(desk.archive.sittings()),
                        desk.cutStretch()),
                playback,
                work,
                ZoneOffset.UTC);
    }

    @Test
    void aRunBecomesAMapOfItsPlaces() {
        model.refresh();
        assertThat(model.choices()).extracting(s -> s.id()).containsExactlyInAnyOrder(run.id(), plucks.id());

        model.open(run.id());

        assertThat(model.cells())
                .extracting(BoardCell::place)
                .containsExactly(new Fret(4, 0), new Fret(4, 1), new Fret(3, 0), new Fret(3, 1));
        for (BoardQuantity quantity : BoardQuantity.values()) {
            model.quantity().set(quantity);
            assertThat(model.cells()).allSatisfy(cell -> {
                assertThat(cell.share().orElseThrow()).isBetween(0.0, 1.0);
                assertThat(cell.spoken())
                        .startsWith("String " + cell.place().string())
                        .contains(cell.text());
            });
        }
        assertThat(model.summary()).startsWith("4 attacks found, 4 of them notes on the fingerboard.");
    }

    @Test
    void aChosenNoteTellsPitchDecayAndPartials() {
        model.open(run.id());
        assertThat(model.facts()).isEmpty();

        model.choose(2);

        assertThat(model.noteTitle()).isEqualTo("String 3, fret 0");
        // G3 of the synthesis, 195.9977 Hz, is named with its octave and figures
        assertThat(model.facts())
                .anySatisfy(f -> {
                    assertThat(f.name()).isEqualTo("Pitch");
                    assertThat(f.words()).startsWith("196").contains("G3").contains("±");
                })
                .anySatisfy(f -> {
                    assertThat(f.name()).isEqualTo("Decay, 60 dB");
                    assertThat(f.words())
                            .containsAnyOf("by T20 (5 to 25 dB down)", "by T30 (5 to 35 dB down)", "cannot tell: ");
                });
        assertThat(model.partials().get(0).frequencyHz().value()).isCloseTo(196.0, within(0.3));
        assertThat(model.picture()).isPresent();
        model.choose(99);
        assertThat(model.note().get()).as("no such note: the old one stays").contains(2);
    }

    @Test
    void hearingANotePlaysItsStretchOfTheOriginalAfterTheCautionAndLow() {
        model.open(run.id());
        model.choose(1);

        model.hear();
        assertThat(desk.played).as("nothing before the caution was read").isEmpty();
        assertThat(playback.waiting().get()).isPresent();
        playback.acceptCaution();

        assertThat(desk.played).hasSize(1);
        NotesDesk.Played heard = desk.played.get(0);
        assertThat(heard.gainDb()).isEqualTo(PlaybackModel.FIRST_LEVEL_DB);
        // from 20 ms before the attack to 32 ms before the next: 2.5 s apart, but for the finding of the attacks
        assertThat(heard.sound().length() / 48_000.0).isCloseTo(2.488, within(0.03));
        Stretch stretch = model.stretch().orElseThrow();
        double[] kept = desk.cutStretch().cut(stretch).channel(0);
        assertThat(heard.sound().channel(0)).as("the kept original, untouched").isEqualTo(kept);
        model.hear();
        assertThat(desk.played).as("the caution comes once").hasSize(2);
    }

    @Test
    void whoDeclinesTheCautionHearsNothingAndIsAskedAgain() {
        model.open(run.id());
        model.choose(0);
        model.hear();
        playback.decline();
        assertThat(playback.waiting().get()).isEmpty();
        model.hear();
        assertThat(playback.waiting().get()).isPresent();
        assertThat(desk.played).isEmpty();
    }

    @Test
    void plucksBecomeMeansWithIntervalsAndWords() {
        model.open(plucks.id());

        assertThat(model.cells()).isEmpty();
        assertThat(model.pluckMeans()).extracting(PluckMean::string).containsExactly(3, 4);
        assertThat(model.pluckMeans()).allSatisfy(m -> {
            assertThat(m.count()).isEqualTo(3);
            assertThat(PluckMean.text(m.lafMaxDb())).contains(" ± ");
            assertThat(PluckMean.text(m.sone())).as("no calibration").isEqualTo("–");
        });
        assertThat(model.summary()).startsWith("6 plucks on 2 open strings.").contains("95 % interval");
    }

    @Test
    void aSinglePluckHasAMeanAndNoInterval() {
        PluckRun all = plucks.latest().findings().plucks().orElseThrow();
        PluckRun one = new PluckRun(all.plucks().subList(0, 1), all.tuning(), all.calibration(), all.methodVersion());

        assertThat(PluckMean.of(one)).singleElement().satisfies(m -> {
            assertThat(m.count()).isEqualTo(1);
            assertThat(PluckMean.text(m.lafMaxDb())).endsWith("one pluck: no interval");
        });
        assertThat(PluckWords.of(one)).startsWith("1 pluck on 1 open string.").doesNotContain("loudest");
    }

    @Test
    void whatChangedElsewhereIsShownOnceTheScreenIsReadAnewAndTheNoteStaysChosen() {
        SetSittingAside elsewhere = new SetSittingAside(desk.archive.sittings(), NotesDesk.CLOCK);
        model.open(run.id());
        model.choose(2);
        elsewhere.setAside(run.id(), "a neighbour's guitar");
        try {
            model.refresh();
            assertThat(model.sitting()).contains(desk.showSitting().show(run.id()));
            assertThat(model.summary()).startsWith("Beware: this sitting is set aside (a neighbour's guitar).");
            assertThat(model.choices())
                    .extracting(model::title)
                    .filteredOn(words -> words.endsWith(", set aside: a neighbour's guitar"))
                    .hasSize(1);
            assertThat(model.note().get()).contains(2);
        } finally {
            elsewhere.takeBack(run.id());
        }
        model.refresh();
        assertThat(model.summary()).doesNotContain("set aside");
    }

    @Test
    void aSittingThatIsNotThereIsSaidAndNothingChanges() {
        model.open(run.id());
        model.open(new SittingId(999));
        assertThat(notices.latest().get().orElseThrow().kind()).isEqualTo(Notice.Kind.TROUBLE);
        assertThat(model.sitting().orElseThrow().id()).isEqualTo(run.id());
    }
}
