package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.chart.FingerboardPicture.Cell;
import io.github.tapwright.chart.FingerboardPicture.FretMap;
import io.github.tapwright.chart.NotePicture.Stem;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures of notes and runs hold what they were given. */
class NotePicturesTest {

    @TempDir
    Path folder;

    private static long pixels(BufferedImage image, int rgb) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) == rgb)
                .count();
    }

    /** Pixels nearer to the frame's orange than to blue or paper, soft edges of lines included. */
    private static long orange(BufferedImage image) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .map(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()))
                .filter(rgb -> (rgb >> 16 & 0xFF) > 180 && (rgb & 0xFF) < 110)
                .count();
    }

    private static FingerboardPicture board(boolean marked) {
        return new FingerboardPicture(
                "Run",
                List.of("two notes"),
                6,
                List.of(new FretMap(
                        "Early decay (s)", 1, 0.5, List.of(new Cell(6, 0, 4.2, false), new Cell(6, 1, -1.3, marked)))));
    }

    private BufferedImage png(FingerboardPicture picture) throws IOException {
        Path file = folder.resolve("board.png");
        ChartFile.write(picture, file);
        return ImageIO.read(file.toFile());
    }

    private long darkest(double difference) throws IOException {
        BufferedImage image = png(new FingerboardPicture(
                "Run",
                List.of(),
                6,
                List.of(new FretMap(
                        "Pitch off (cents)",
                        0,
                        10,
                        List.of(new Cell(6, 0, 0, false), new Cell(6, 1, difference, false))))));
        return Arrays.stream(image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                .filter(rgb -> rgb == Look.colour(0).getRGB())
                .count();
    }

    @Test
    void hundredthsOfACentLookAlike() throws IOException {
        assertThat(darkest(10)).isGreaterThan(1000);
        assertThat(darkest(0.02)).isZero();
    }

    @Test
    void aDeadNoteIsFramedAndNothingElseIs() throws IOException {
        long plain = orange(png(board(false)));
        assertThat(plain).isZero();
        assertThat(orange(png(board(true)))).isGreaterThan(500);
    }

    @Test
    void theLargestValueHasTheFullColour() throws IOException {
        assertThat(pixels(png(board(false)), Look.colour(0).getRGB())).isGreaterThan(5_000);
    }

    @Test
    void figuresAreTextWithATrueMinus() throws IOException {
        Path file = folder.resolve("board.svg");
        ChartFile.write(board(false), file);
        assertThat(Files.readString(file)).contains(">4.2<", ">−1.3<");
    }

    @Test
    void partialsHaveStemsAndBothStages() throws IOException {
        Path file = folder.resolve("note.png");
        ChartFile.write(
                new NotePicture(
                        "Note",
                        List.of(),
                        List.of(
                                new Stem(110, -10, Optional.of(2.0), Optional.of(6.0)),
                                new Stem(220, -20, Optional.empty(), Optional.empty()))),
                file);
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(pixels(image, Look.colour(0).getRGB())).isGreaterThan(3_000);
        assertThat(pixels(image, Look.colour(1).getRGB())).isBetween(100L, 1_000L);
    }

    @Test
    void picturesOfNothingAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NotePicture("x", List.of(), List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new FingerboardPicture("x", List.of(), 6, List.of()));
    }
}
