package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.InventedResults;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.played.InventedRun;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Reports of two sittings of notes and of two of plucks, opened as any reader of PDF would. */
class PlayedReportTest {

    private static final String NASTY = "<script>alert(1)</script> & \" '";

    private final Random chance = new Random(5);

    @TempDir
    Path folder;

    private ReportedWorkshop workshop;
    private LocalDate fitted = LocalDate.of(2026, 1, 14);

    @BeforeEach
    void open() {
        workshop = new ReportedWorkshop(folder, "Heron");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void aClientReadsOnTwoPagesHowMuchLongerNotesRingAndWhatThatCannotTell() throws IOException {
        try (PDDocument pdf = report(ReportKind.CLIENT, notes("4", "4"), Optional.empty())) {
            String text = text(pdf);

            assertThat(text)
                    .contains(
                            "Compared with sitting 1", "A is sitting 1 of guitar 117", "pluck, shown with this warning")
                    .containsPattern(
                            "the early decay of notes is \\d+ % longer \\(\\d+ to \\d+\\): more than what was played")
                    .contains("string 3, fret 5: died away fast in A, rings as its neighbours do in B")
                    .contains("setting up and playing again included: that moves decay times by 5 %")
                    .contains("why A and B differ", "Protect your eyes");
            assertThat(text.indexOf("May they be compared?")).isLessThan(text.indexOf("In words"));
            assertThat(text).as("letters of the maps").contains("9 10 11 12 Fret");
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
            assertThat(bookmarks(pdf))
                    .containsExactly(
                            "In short",
                            "Compared with sitting 1",
                            "Room and set-up",
                            "What this tells, and what it cannot",
                            "Cautions");
        }
    }

    @Test
    void theWorkshopReadsEveryPlaceEveryConditionAndTheOriginalsOfBoth() throws IOException {
        try (PDDocument pdf = report(ReportKind.WORKSHOP, notes("4", "4"), Optional.empty())) {
            String text = text(pdf);

            assertThat(text)
                    .contains("gain fine fine fine 4 / 4", "age of the strings fine fine fine")
                    .contains("Over all strings", "String by string: decay time", "Place by place")
                    .contains("3 questions were asked at once")
                    .contains("Conditions of A, sitting 1", "Conditions of B, sitting 2", "fingerboard-test")
                    .contains("Methods and settings of A, sitting 1", "Methods and settings of B, sitting 2");
            for (Fret place : InventedRun.SIX_STRINGS) {
                assertThat(text)
                        .containsPattern(
                                " " + place.string() + "/" + place.fret() + " \\d\\.\\d\\d \\d\\.\\d\\d [+−]?\\d+ ");
            }
            assertThat(text.split("SHA-256 [0-9a-f]{64}")).as("originals").hasSize(3);
        }
    }

    @Test
    void whatTheConditionsForbidIsReportedAsRefusedWithItsReason() throws Exception {
        ReportSubject.OfTwo two = notes("4", "5");
        try (PDDocument pdf = report(ReportKind.CLIENT, two, Optional.empty())) {
            assertThat(text(pdf))
                    .contains("gain, refused: 4 / 5", "the level LAFmax: not compared, the conditions forbid it");
        }
        assertThat(maps(workshop.write(ReportKind.CLIENT, two, "refused.html")))
                .containsExactly("Over the fingerboard, B minus A: early decay (% of A's)");
        try (PDDocument pdf = report(ReportKind.WORKSHOP, two, Optional.empty())) {
            assertThat(text(pdf)).contains("level LAFmax dB refused refused refused refused refused");
        }
    }

    @Test
    void aReasonToCompareInSpiteOfTheConditionsStaysOnTheReportAsText() throws Exception {
        Path file = workshop.write(ReportKind.CLIENT, with(notes("4", "5"), Optional.of(NASTY)), "despite.html");
        String html = Files.readString(file);

        assertThat(html)
                .contains("because: &lt;script&gt;", "Shown although the conditions forbid it: &lt;script&gt;")
                .doesNotContain("<script");
        assertThat(maps(file))
                .containsExactly("Over the fingerboard, B minus A: early decay (% of A's), level LAFmax (dB)");
    }

    @Test
    void plucksTwiceAsStrongAreReportedLouderStringByString() throws IOException {
        ReportSubject.OfTwo two = two(InventedPlucks.louder(0, chance), InventedPlucks.louder(6, chance), "4", "4");
        try (PDDocument pdf = report(ReportKind.CLIENT, two, Optional.empty())) {
            assertThat(text(pdf))
                    .containsPattern("the level LAFmax is 6\\.\\d dB higher")
                    .contains("String by string: level LAFmax", "above what listeners notice")
                    .contains("whether another guitar is louder: that takes the same strings");
            assertThat(pdf.getNumberOfPages()).isLessThanOrEqualTo(2);
        }
        try (PDDocument pdf = report(ReportKind.WORKSHOP, two, Optional.empty())) {
            assertThat(text(pdf))
                    .contains("String by string: momentary loudness", "B minus A (LU)", "plucks-test")
                    .doesNotContain("Place by place", "Of decay times");
        }
    }

    @Test
    void sittingsWithNothingInCommonAreSaidToHaveNothingInCommon() throws IOException {
        InventedRun usual = InventedRun.of(1, 0);
        ReportSubject.OfTwo two = two(
                new Findings.OfNotes(usual.played(places(1), chance)),
                new Findings.OfNotes(usual.played(places(6), chance)),
                "4",
                "4");
        try (PDDocument pdf = report(ReportKind.CLIENT, two, Optional.empty())) {
            assertThat(text(pdf))
                    .contains("Nothing was played at the same place in both.")
                    .as("the sitting's own maps, as none are drawn of both")
                    .contains("Over the fingerboard", "9 10 11 12 Fret");
        }
    }

    @Test
    void notesAreNotSetAgainstTaps() throws IOException {
        ReportSubject.OfTwo two = two(
                new Findings.OfTaps(InventedResults.threeResonances()),
                new Findings.OfNotes(InventedRun.of(1, 0).played(places(1), chance)),
                "4",
                "4");

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> report(ReportKind.CLIENT, two, Optional.empty()))
                .withMessageContaining("choose a sitting of taps");
        assertThat(folder.resolve("report.pdf")).doesNotExist();
    }

    /** Notes that ring a third longer the second time, and a dead one that has gone. */
    private ReportSubject.OfTwo notes(String gainOfA, String gainOfB) throws IOException {
        InventedRun before = new InventedRun(1, 0, 0.1, 1, List.of(new Fret(3, 5)));
        return two(
                new Findings.OfNotes(before.played(InventedRun.SIX_STRINGS, chance)),
                new Findings.OfNotes(InventedRun.of(1.35, 0).played(InventedRun.SIX_STRINGS, chance)),
                gainOfA,
                gainOfB);
    }

    private static List<Fret> places(int string) {
        return InventedRun.SIX_STRINGS.stream()
                .filter(p -> p.string() == string)
                .toList();
    }

    private ReportSubject.OfTwo two(Findings before, Findings after, String gainOfA, String gainOfB)
            throws IOException {
        SittingId a = workshop.add(before, conditions(gainOfA));
        SittingId b = workshop.add(after, conditions(gainOfB));
        return new ReportSubject.OfTwo(b, a, settings(Optional.empty()));
    }

    private static ReportSubject.OfTwo with(ReportSubject.OfTwo two, Optional<String> despite) {
        return new ReportSubject.OfTwo(two.sitting(), two.against(), settings(despite));
    }

    private static CompareSittings.Settings settings(Optional<String> despite) {
        return new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, despite);
    }

    /** All written down, strings a month old each time; levels hang on the gain. */
    private Conditions conditions(String gain) {
        fitted = fitted.plusDays(30);
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(20.0), Optional.of(45.0)),
                new Strings(Optional.of(StringState.FREE), Optional.of("nylon"), Optional.of(fitted)),
                HoleState.OPEN,
                new Placing(Optional.of("stand"), Optional.of("finger"), Optional.of("hole")),
                new Microphone(Optional.of("M1"), Optional.of(500.0), Optional.of(gain)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private PDDocument report(ReportKind kind, ReportSubject.OfTwo two, Optional<String> despite) throws IOException {
        return Loader.loadPDF(
                workshop.write(kind, with(two, despite), "report.pdf").toFile());
    }

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replaceAll("[\\s\\u00A0]+", " ");
    }

    /** What its pictures say they show. */
    private static List<String> maps(Path html) throws Exception {
        NodeList pictures = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(html.toFile())
                .getElementsByTagName("svg");
        return IntStream.range(0, pictures.getLength())
                .mapToObj(i -> ((Element) pictures.item(i)).getAttribute("aria-label"))
                .toList();
    }

    private static List<String> bookmarks(PDDocument pdf) {
        Iterable<PDOutlineItem> items =
                pdf.getDocumentCatalog().getDocumentOutline().children();
        return StreamSupport.stream(items.spliterator(), false)
                .map(PDOutlineItem::getTitle)
                .toList();
    }
}
