package io.github.tapwright.desktop.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import io.github.tapwright.desktop.TestDesk;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.synthesis.FingerboardRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One string played twice, once with a dead note, side by side on the desk. */
class CompareNotesTest {

    private static final List<Fret> STRING =
            IntStream.rangeClosed(0, 6).mapToObj(f -> new Fret(3, f)).toList();

    @TempDir
    Path folder;

    private TestDesk desk;
    private CompareModel model;
    private Sitting dull;
    private Sitting even;
    private Sitting taps;

    @BeforeEach
    void open() throws IOException {
        desk = new TestDesk(folder);
        ShopNumber nine = desk.instrument("9");
        dull = desk.notes(nine, new FingerboardRun(STRING, 1.6, Map.of(new Fret(3, 4), 0.3)));
        even = desk.notes(nine, new FingerboardRun(STRING, 1.6));
        taps = desk.sitting(nine, 102, 196, TestDesk.strung(HoleState.OPEN));
        model = new CompareModel(
                desk.listSittings(),
                desk.compareSittings(),
                desk.comparePlayed(),
                desk.settings(),
                desk.work(),
                desk.notices(),
                ZoneOffset.UTC);
        model.refresh();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void choose(Sitting first, Sitting second) {
        Sides.choose(model, first, second);
    }

    @Test
    void runsAreComparedStringByStringWithTheirDeadNotes() throws Exception {
        choose(dull, even);

        assertThat(Sides.side(model, dull).words()).endsWith(", notes)");
        assertThat(model.figures())
                .extracting(ComparedFigure::what, ComparedFigure::quantity)
                .startsWith(tuple("all strings", "early decay"), tuple("string 3", "early decay"));
        assertThat(model.figures().get(1).first()).endsWith(" s");
        assertThat(model.figures().get(1).change95()).endsWith(" %");
        assertThat(model.sentences())
                .extracting(Sentence::words)
                .contains("string 3, fret 4: died away fast in A, rings as its neighbours do in B");
        assertThat(model.traces()).isEmpty();
        assertThat(model.maps()).isPresent();
        model.savePicture(folder.resolve("maps.svg"));
        assertThat(Files.readString(folder.resolve("maps.svg"))).contains("B minus A");
    }

    @Test
    void aReportSetsTheLaterNotesAgainstTheEarlier() {
        choose(dull, even);

        assertThat(model.subject())
                .hasValueSatisfying(s -> assertThat(s).isInstanceOfSatisfying(ReportSubject.OfTwo.class, two -> {
                    assertThat(two.sitting()).isEqualTo(even.id());
                    assertThat(two.against()).isEqualTo(dull.id());
                }));
    }

    @Test
    void notesAgainstTapsAreRefusedInWords() {
        choose(dull, taps);

        assertThat(model.result().get()).isEmpty();
        assertThat(desk.said()).contains("choose two of the same kind");
    }
}
