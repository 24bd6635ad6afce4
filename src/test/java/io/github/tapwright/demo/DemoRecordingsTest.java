package io.github.tapwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.synthesis.SyntheticTaps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files in recordings-demo are what the model gives: if a model or a file changed alone, this fails. */
class DemoRecordingsTest {

    private static final Path FOLDER = Path.of("recordings-demo");
    private static final ObjectMapper JSON = new ObjectMapper();

    private static Stream<DemoSitting> sittings() {
        return DemoWorkshop.sittings().stream();
    }

    private static JsonNode truthOf(DemoSitting sitting) throws IOException {
        JsonNode all = JSON.readTree(FOLDER.resolve("truth.json").toFile());
        for (JsonNode node : all.get("sittings")) {
            if (node.get("file").asText().equals(sitting.file())) {
                return node;
            }
        }
        throw new AssertionError("no truth for " + sitting.file());
    }

    /** One unit of the last place for other processors' last bits. */
    @Test
    void recordingAndSpoiltTapsAreWhatTheModelGives() throws IOException {
        DemoSitting sitting = DemoWorkshop.sittings().get(9);
        SyntheticTaps taps = DemoRecording.of(sitting, BodySound.of(sitting));
        requireSameSamples(DemoRecording.quantised(taps.recording()), sitting.file());
        assertStrikes(truthOf(sitting).get("strikes"), taps);
    }

    @Test
    void runOfNotesIsWhatTheModelGives() throws IOException {
        DemoRun run = DemoWorkshop.run();
        requireSameSamples(run.quantised(), run.file());
        JsonNode truth =
                JSON.readTree(FOLDER.resolve("truth.json").toFile()).get("runs").get(0);
        assertThat(truth).isEqualTo(JSON.readTree(TruthJson.run(run).toString()));
    }

    private static void requireSameSamples(int[] made, String file) throws IOException {
        int[] kept = FlacFile.read(FOLDER.resolve(file));
        assertThat(kept).hasSameSizeAs(made);
        int worst = 0;
        for (int n = 0; n < made.length; n++) {
            worst = Math.max(worst, Math.abs(made[n] - kept[n]));
        }
        assertThat(worst).isLessThanOrEqualTo(1);
    }

    private static void assertStrikes(JsonNode strikes, SyntheticTaps taps) {
        assertThat(strikes).hasSize(7);
        assertThat(strikes.get(3).get("expected_rejection").asText()).isEqualTo("double strike");
        assertThat(strikes.get(3).get("second_onset_s").asDouble())
                .isCloseTo(taps.strikes().get(3).secondOnsetSeconds().orElseThrow(), within(1e-5));
        assertThat(strikes.get(2).get("good").asBoolean()).isTrue();
        assertThat(strikes.get(2).get("onset_s").asDouble())
                .isCloseTo(taps.strikes().get(2).onsetSeconds(), within(1e-5));
    }

    @ParameterizedTest
    @MethodSource("sittings")
    void truthNamesTheModelsPoles(DemoSitting sitting) throws IOException {
        JsonNode resonances = truthOf(sitting).get("resonances");
        List<BodySound.NamedMode> modes = BodySound.of(sitting).modes();
        assertThat(resonances).hasSize(modes.size());
        for (int m = 0; m < modes.size(); m++) {
            double frequency = modes.get(m).mode().frequencyHz();
            assertThat(resonances.get(m).get("name").asText())
                    .isEqualTo(modes.get(m).name());
            assertThat(resonances.get(m).get("frequency_hz").asDouble()).isCloseTo(frequency, within(1e-4));
            assertThat(resonances.get(m).get("q").asDouble())
                    .isCloseTo(modes.get(m).mode().q(), within(1e-4));
            assertThat(resonances.get(m).get("decay_time_s").asDouble())
                    .isCloseTo(2.198806 * modes.get(m).mode().q() / frequency, within(1e-6));
        }
    }

    @Test
    void workshopIsTheInventedOne() throws IOException {
        JsonNode kept = JSON.readTree(FOLDER.resolve("workshop.json").toFile());
        assertThat(kept).isEqualTo(JSON.readTree(WorkshopJson.all().toString()));
        for (JsonNode sitting : kept.get("sittings")) {
            assertThat(FOLDER.resolve(sitting.get("file").asText())).isRegularFile();
        }
    }

    @Test
    void staysSmall() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            long bytes = files.mapToLong(f -> f.toFile().length()).sum();
            assertThat(bytes).isLessThan(18_000_000);
        }
    }
}
