package io.github.tapwright.chart;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.chart.TrendPicture.Dot;
import io.github.tapwright.chart.TrendPicture.Line;
import io.github.tapwright.chart.TrendPicture.Panel;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrendPictureTest {

    private static final Instant FIRST = Instant.parse("2026-03-14T09:26:53Z");

    @TempDir
    private Path folder;

    /** Two resonances that did the same: one would hide the other. */
    @ParameterizedTest
    @ValueSource(ints = {1, 40})
    void barsOfOneSittingDoNotHideEachOther(int sittings) throws IOException {
        List<Dot> dots = IntStream.range(0, sittings)
                .mapToObj(i -> new Dot(FIRST.plus(Duration.ofDays(i)), i % 3, 2))
                .toList();
        TrendPicture picture = new TrendPicture(
                "Instrument 31",
                List.of(),
                List.of(new Panel(
                        "Frequency (%)",
                        List.of(new Line("main air", 0, dots, List.of()), new Line("main top", 1, dots, List.of())))),
                List.of(),
                List.of(),
                ZoneOffset.UTC);
        Path file = folder.resolve("trend.png");
        ChartFile.write(picture, file);

        BufferedImage image = ImageIO.read(file.toFile());
        long air = pixels(image, Look.colour(0));
        long top = pixels(image, Look.colour(1));
        assertThat((double) Math.min(air, top) / Math.max(air, top)).isGreaterThan(0.5);
    }

    private static long pixels(BufferedImage image, Color colour) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .filter(i -> image.getRGB(i % image.getWidth(), i / image.getWidth()) == colour.getRGB())
                .count();
    }

    /** From an afternoon's repeats to a working life. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 6, 30, 200, 900, 4000, 15_000})
    void theAxisNamesNoDayTwiceAndAtLeastTwo(int days) throws IOException {
        List<Dot> dots = List.of(
                new Dot(FIRST, 101), new Dot(FIRST.plus(Duration.ofDays(days)).plusSeconds(3000), 102));
        TrendPicture picture = new TrendPicture(
                "Instrument 31",
                List.of(),
                List.of(new Panel("Hz", List.of(new Line("main air", 0, dots, List.of())))),
                dots,
                List.of(),
                ZoneOffset.UTC);
        Path file = folder.resolve("trend.svg");
        ChartFile.write(picture, file);

        List<String> dates = Pattern.compile(">(\\d{4}-\\d\\d-\\d\\d)<")
                .matcher(Files.readString(file))
                .results()
                .map(MatchResult::group)
                .toList();
        assertThat(dates).doesNotHaveDuplicates().hasSizeBetween(2, 20);
    }
}
