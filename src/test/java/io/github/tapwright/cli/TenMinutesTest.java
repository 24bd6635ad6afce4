package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Ten minutes of taps, 96 kHz, two channels, 24 bit, go whole through the program as it is started for a maker:
 * in a process of its own with a heap of 512 MB, where the samples alone would fill 920 MB.
 * How full the heap got goes to standard output.
 */
class TenMinutesTest {

    private static final int HEADER_BYTES = 58;
    private static final int FRAME_BYTES = 6;
    private static final int PIECES = 19;
    private static final int STRIKES_OF_A_PIECE = 2;
    private static final double SECONDS_BETWEEN_STRIKES = 20;
    private static final Pattern HEAP_BEFORE_COLLECTION = Pattern.compile("(\\d+)M->\\d+M\\(\\d+M\\)");

    @TempDir
    Path folder;

    @Test
    void fitIntoTheLaunchersHeap() throws Exception {
        Path sound = folder.resolve("ten-minutes.wav");
        repeat(writePiece(), sound);
        Path said = folder.resolve("said.json");
        Path collections = folder.resolve("collections.log");
        assertThat(run(sound, said, collections)).isEqualTo(ExitCode.DONE);

        JsonNode result = new ObjectMapper().readTree(said.toFile());
        assertThat(result.get("duration_s").asDouble()).isGreaterThan(600);
        assertThat(result.get("channels").asInt()).isEqualTo(2);
        assertThat(result.get("strikes")).hasSize(PIECES * STRIKES_OF_A_PIECE);
        assertThat(result.get("strikes")).allMatch(s -> s.get("used").asBoolean());
        JsonNode resonances = result.get("resonances");
        assertThat(resonances).hasSize(2);
        assertThat(resonances.get(0).get("frequency_hz").asDouble()).isCloseTo(101, within(0.1));
        assertThat(resonances.get(1).get("frequency_hz").asDouble()).isCloseTo(188, within(0.1));

        int peak = HEAP_BEFORE_COLLECTION
                .matcher(Files.readString(collections))
                .results()
                .mapToInt(m -> Integer.parseInt(m.group(1)))
                .max()
                .orElseThrow();
        System.out.printf("ten minutes of taps: heap at most %d MB before a collection%n", peak);
    }

    /** As the launcher starts it; see the file tapwright. */
    private int run(Path sound, Path said, Path collections) throws Exception {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx512m",
                        "-XX:+UseSerialGC",
                        "-Xlog:gc:file=" + collections,
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Tapwright.class.getName(),
                        "taps",
                        "--json",
                        sound.toString())
                .redirectOutput(said.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            return program.waitFor();
        } finally {
            program.destroyForcibly();
        }
    }

    /** Half a minute with two taps, the right channel softer than the left. */
    private Path writePiece() throws IOException {
        Recording mono = TapScene.of(TrueMode.resonator(101, 24, 1), TrueMode.resonator(188, 32, 1.2))
                .rate(96_000)
                .firstAt(12)
                .strikes(STRIKES_OF_A_PIECE, SECONDS_BETWEEN_STRIKES)
                .scatter(0, 0)
                .seed(10)
                .build()
                .recording();
        double[] left = mono.channel(0);
        double[] right = Arrays.stream(left).map(x -> 0.5 * x).toArray();
        Path piece = folder.resolve("piece.wav");
        WavWriter.write(piece, Recording.of(new SampleRate(96_000), left, right), WavSamples.INT_24);
        return piece;
    }

    /** The piece's sound again and again behind one header that states the whole length. */
    private static void repeat(Path piece, Path sound) throws IOException {
        byte[] bytes = Files.readAllBytes(piece);
        int soundBytes = (bytes.length - HEADER_BYTES) / FRAME_BYTES * FRAME_BYTES;
        ByteBuffer.wrap(bytes)
                .order(ByteOrder.LITTLE_ENDIAN)
                .putInt(4, HEADER_BYTES - 8 + PIECES * soundBytes)
                .putInt(46, PIECES * soundBytes / FRAME_BYTES)
                .putInt(54, PIECES * soundBytes);
        try (OutputStream out = Files.newOutputStream(sound)) {
            out.write(bytes, 0, HEADER_BYTES);
            for (int i = 0; i < PIECES; i++) {
                out.write(bytes, HEADER_BYTES, soundBytes);
            }
        }
    }
}
