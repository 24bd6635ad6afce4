package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.tapwright.level.BandLevel;
import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.FullScale;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.LevelReference;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.statistics.Estimate;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LevelPictureTest {

    private static final Calibration CALIBRATION =
            new Calibration(Estimate.of(120, 0.14), CalibratorTone.classOne(94), 1000, 0.01, 0.05, 8, "invented-1");

    @TempDir
    Path folder;

    @Test
    void aHigherLevelIsAHigherBarInItsColour() throws IOException {
        assertThat(blue(spectrum("a", new FullScale(), 10)))
                .isGreaterThan(blue(spectrum("a", new FullScale(), 0)) + 9000);
    }

    @Test
    void spectraStandSideBySideWithALegend() throws Exception {
        Path file = folder.resolve("two.png");
        ChartFile.write(
                picture(new FullScale(), spectrum("a", new FullScale(), 0), spectrum("b", new FullScale(), 0)), file);
        BufferedImage image = ImageIO.read(file.toFile());

        assertThat(image.getWidth()).isEqualTo(2 * Drawing.SCREEN_WIDTH);
        long first = pixelsOf(image, Look.colour(0).getRGB());
        assertThat(first).isGreaterThan(20_000);
        assertThat(pixelsOf(image, Look.colour(1).getRGB())).isBetween(first * 9 / 10, first * 11 / 10);
        assertThat(text(picture(
                        new FullScale(),
                        spectrum("first", new FullScale(), 0),
                        spectrum("second", new FullScale(), 0))))
                .contains("first", "second");
    }

    @Test
    void soundPressureComesWithItsUnitAndContoursOfEqualLoudness() throws Exception {
        assertThat(text(picture(CALIBRATION, spectrum("a", CALIBRATION, 70))))
                .contains("Instrument 117", "31.5", "16000", "20 phon", "60 phon", "ISO 226");
    }

    @Test
    void relativeLevelsHaveNoContoursAndSaySo() throws Exception {
        assertThat(text(picture(new FullScale(), spectrum("a", new FullScale(), -20))))
                .contains("relative levels")
                .doesNotContain("40 phon", "ISO 226");
    }

    @Test
    void theSamePictureIsTheSameFile() throws IOException {
        Path one = folder.resolve("one.svg");
        Path two = folder.resolve("two.svg");
        ChartFile.write(picture(CALIBRATION, spectrum("a", CALIBRATION, 70)), one);
        ChartFile.write(picture(CALIBRATION, spectrum("a", CALIBRATION, 70)), two);

        assertThat(two).hasSameTextualContentAs(one);
        assertThat(Files.readString(one)).startsWith("<?xml");
    }

    @Test
    void nothingAndTooMuchAreRefused() {
        BandSpectrum spectrum = spectrum("a", new FullScale(), 0);
        assertThatIllegalArgumentException().isThrownBy(() -> picture(new FullScale()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> picture(
                        new FullScale(), Collections.nCopies(6, spectrum).toArray(BandSpectrum[]::new)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> picture(new FullScale(), new BandSpectrum("a", List.of())));
    }

    /** Pixels of the bars beside a second spectrum that keeps the axis where it is. */
    private long blue(BandSpectrum spectrum) throws IOException {
        Path file = folder.resolve("bars.png");
        ChartFile.write(picture(new FullScale(), spectrum, spectrum("high", new FullScale(), 20)), file);
        return pixelsOf(ImageIO.read(file.toFile()), Look.colour(0).getRGB());
    }

    private String text(LevelPicture picture) throws Exception {
        Path file = folder.resolve("text.svg");
        ChartFile.write(picture, file);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(file.toFile())
                .getDocumentElement()
                .getTextContent()
                .strip();
    }

    private static LevelPicture picture(LevelReference reference, BandSpectrum... spectra) {
        return new LevelPicture("Instrument 117", List.of("invented"), reference, List.of(spectra));
    }

    /** Falls by 1.5 dB a band, and by some more than 40 dB over all. */
    private static BandSpectrum spectrum(String label, LevelReference reference, double highestDb) {
        List<BandLevel> bands = Bandwidth.THIRD_OCTAVE.bandsWithin(48_000).stream()
                .map(b -> new BandLevel(b, new Level(highestDb - 1.5 * (b.index() + 17), reference)))
                .toList();
        return new BandSpectrum(label, bands);
    }

    private static long pixelsOf(BufferedImage image, int rgb) {
        return IntStream.range(0, image.getHeight())
                .mapToLong(y -> IntStream.range(0, image.getWidth())
                        .filter(x -> image.getRGB(x, y) == rgb)
                        .count())
                .sum();
    }
}
