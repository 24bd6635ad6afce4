package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.InventedResults;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.ResponseCurve;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class ChartFileTest {

    @TempDir
    Path folder;

    @Test
    void aPngIsTwiceAsFineAsThePictureAndShowsTheCurveInItsColour() throws IOException {
        Path file = folder.resolve("curve.png");
        ChartFile.write(picture(trace("before", 1)), file);

        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(2 * Drawing.SCREEN_WIDTH);
        assertThat(pixelsOf(image, Look.colour(0).getRGB())).isGreaterThan(2000);
        assertThat(pixelsOf(image, Look.PAPER.getRGB())).isGreaterThan(image.getWidth() * image.getHeight() / 2);
    }

    @Test
    void anSvgIsWellFormedAndHoldsTitleNamesAndFiguresAsText() throws Exception {
        Path file = folder.resolve("curve.svg");
        ChartFile.write(picture(trace("before", 1)), file);

        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(document.getDocumentElement().getTextContent())
                .contains("Instrument 117", "main air", "main top", "98.4 ± 0.1 Hz", "Frequency (Hz)");
    }

    @Test
    void severalCurvesHaveALegendAndDifferInLineStyle() throws IOException {
        Path file = folder.resolve("both.svg");
        ChartFile.write(picture(trace("in the white", 1), trace("finished", 0.97)), file);

        assertThat(Files.readString(file)).contains("in the white", "finished", "stroke-dasharray");
    }

    @Test
    void figuresUnderANameStandInTheOrderOfTheCurvesAlthoughTheSecondIsLower() throws IOException {
        Path file = folder.resolve("both.svg");
        ResponseCurve curve = trace("", 1).curve();
        ChartFile.write(
                picture(
                        new Trace(
                                "A",
                                curve,
                                List.of(new Mark(190, "main top", "of A"), new Mark(100, "main air", "air of A"))),
                        new Trace(
                                "B",
                                curve,
                                List.of(new Mark(180, "main top", "of B"), new Mark(101, "main air", "air of B")))),
                file);

        assertThat(Files.readString(file))
                .containsSubsequence("main air", "air of A", "air of B", "main top", "of A", "of B");
    }

    @Test
    void theSamePictureIsTheSameFile() throws IOException {
        Path one = folder.resolve("one.svg");
        Path two = folder.resolve("two.svg");
        ChartFile.write(picture(trace("before", 1)), one);
        ChartFile.write(picture(trace("before", 1)), two);

        assertThat(two).hasSameTextualContentAs(one);
    }

    @Test
    void aFileThatIsThereIsReplacedAndNothingElseIsLeftBehind() throws IOException {
        Path file = Files.writeString(folder.resolve("curve.PNG"), "old");
        ChartFile.write(picture(trace("before", 1)), file);

        assertThat(ImageIO.read(file.toFile())).isNotNull();
        assertThat(folder).isDirectoryNotContaining(p -> !p.equals(file));
    }

    @Test
    void anotherEndingIsRefusedWithTheTwoThatWork() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ChartFile.requireKnownEnding(Path.of("curve.jpg")))
                .withMessageContaining(".png or .svg");
    }

    private static ResponsePicture picture(Trace... traces) {
        return new ResponsePicture(
                "Instrument 117", List.of("2 of 3 strikes used, resolution 1.4 Hz"), List.of(traces));
    }

    private static Trace trace(String label, double shift) {
        TapResult result = InventedResults.result(shift);
        List<Mark> marks = result.resonances().stream()
                .map(r -> new Mark(
                        r.resonance().frequencyHz().value(),
                        r.name().map(ModeName::words).orElse(""),
                        String.format(
                                Locale.ROOT,
                                "%.1f ± 0.1 Hz",
                                r.resonance().frequencyHz().value())))
                .toList();
        return new Trace(label, result.curve().orElseThrow(), marks);
    }

    private static long pixelsOf(BufferedImage image, int rgb) {
        return IntStream.range(0, image.getHeight())
                .mapToLong(y -> IntStream.range(0, image.getWidth())
                        .filter(x -> image.getRGB(x, y) == rgb)
                        .count())
                .sum();
    }
}
