package io.github.tapwright.microphone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.cli.Tapwright;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.synthesis.PlantedFault;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.StrikeSet;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program records what a virtual microphone hears. */
class RecordTest {

    private static final double FAINTEST_TAP_DBFS = -20;

    @TempDir
    Path folder;

    private VirtualMicrophone microphone;

    @BeforeEach
    void plugIn() throws Exception {
        microphone = VirtualMicrophone.start(folder, 48_000);
        try (Archive archive = Archive.open(archive(), Clock.systemUTC())) {
            archive.instruments().add(Instrument.of(new ShopNumber("T-17"), InstrumentKind.CLASSICAL));
        }
    }

    @AfterEach
    void unplug() {
        if (microphone != null) {
            microphone.close();
        }
    }

    private Process run(String... command) throws IOException {
        List<String> arguments = new ArrayList<>(Arrays.asList(command));
        arguments.addAll(List.of("--archive", archive().toString()));
        return microphone.java(
                List.of("-Dorg.sqlite.tmpdir=" + folder, "-Dtapwright.home=."),
                Tapwright.class,
                arguments.toArray(String[]::new));
    }

    private Path archive() {
        return folder.resolve("archive");
    }

    private static SyntheticTaps taps() {
        return TapScene.of(TrueMode.resonator(102, 22, 0.5), TrueMode.resonator(196, 30, 1))
                .strikes(5, 1.3)
                .firstAt(1.5)
                .fault(2, PlantedFault.DOUBLE_STRIKE)
                .build();
    }

    private Path file(SyntheticTaps taps) throws IOException {
        Path file = folder.resolve("taps.wav");
        WavWriter.write(file, taps.recording(), WavSamples.INT_24);
        return file;
    }

    @Test
    void theStrikesOfARecordingAreThoseOfTheFileThatWasPlayed() throws Exception {
        Path played = file(taps());
        Process record = run("record", "T-17", "--seconds", "20", "--temperature", "21", "--hole", "open");
        awaitCapture();
        assertThat(microphone.play(played).waitFor()).isZero();
        record.getOutputStream().write('\n');
        record.getOutputStream().flush();
        String said = new String(record.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(record.waitFor()).isZero();
        assertThat(said).contains("Sitting 1 of instrument T-17", "21 °C");
        compare(strikes(played), kept().latest().taps().orElseThrow().strikes());
    }

    private static List<Strike> strikes(Path file) {
        try (var audio = AudioFile.open(file)) {
            TapTrack track = TapTrack.read(audio, TapSettings.STANDARD);
            return StrikeSet.find(List.of(track), TapSettings.STANDARD).strikes();
        }
    }

    /** All strikes found alike, at the same distances from the first, whenever the player began. */
    private static void compare(List<Strike> played, List<Strike> heard) {
        // Before the player begins there is no noise at all, so the beginning of the file's noise is a leap of its own.
        List<Strike> recorded =
                heard.stream().filter(s -> s.peakDbfs() > FAINTEST_TAP_DBFS).toList();
        assertThat(recorded).hasSameSizeAs(played).hasSize(5);
        double later = recorded.get(0).onsetSeconds() - played.get(0).onsetSeconds();
        for (int i = 0; i < played.size(); i++) {
            assertThat(recorded.get(i).onsetSeconds() - later)
                    .isCloseTo(played.get(i).onsetSeconds(), within(0.001));
            assertThat(recorded.get(i).peakDbfs()).isCloseTo(played.get(i).peakDbfs(), within(0.05));
            assertThat(recorded.get(i).used()).isEqualTo(played.get(i).used());
        }
    }

    private Sitting kept() {
        try (Archive archive = Archive.open(archive(), Clock.systemUTC())) {
            assertThat(archive.captures().leftBehind()).isEmpty();
            return archive.sittings().find(new SittingId(1)).orElseThrow();
        }
    }

    @Test
    void aRecordingThatCannotReachTheDiskEndsAtOnceWithARemedy() throws Exception {
        Path captures = archive().resolve("captures");
        Files.deleteIfExists(captures);
        Files.writeString(captures, "not a folder");

        Process record = run("record", "T-17", "--seconds", "60");

        assertThat(record.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(record.exitValue()).isEqualTo(4);
        Files.delete(captures);
        try (Archive archive = Archive.open(archive(), Clock.systemUTC())) {
            assertThat(archive.verify(Progress.SILENT).waiting()).isEmpty();
        }
    }

    @Test
    void theSignalThatStopsAProgramEndsTheRecordingInOrderAndKeepsIt() throws Exception {
        Process record = run("record", "T-17", "--procedure", "taps");
        awaitCapture();
        Thread.sleep(1500);
        record.destroy(); // SIGTERM; Ctrl-C takes the same way
        assertThat(record.waitFor(30, TimeUnit.SECONDS)).isTrue();

        assertThat(record.exitValue()).as("nothing usable in silence").isEqualTo(1);
        assertThat(kept().recordings().get(0).facts().durationSeconds()).isBetween(1.0, 10.0);
    }

    @Test
    void whatIsPlayedBackIsHeardTurnedDownAndToItsEnd() throws Exception {
        Process play = microphone.java(List.of(), PlayMain.class, file(taps()).toString(), "-14.1");
        String said = new String(play.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(play.waitFor()).isZero();
        // The strike of the first two seconds peaks at −5.9 dB; turned down it peaks at −20 dB, which is 0.1.
        assertThat(said).contains("over Optional.empty");
        assertThat(Double.parseDouble(said.substring("peak ".length(), said.indexOf(" over"))))
                .isCloseTo(0.1, within(0.002));
    }

    /** Until sound reaches the disk. */
    private void awaitCapture() throws Exception {
        Path captures = archive().resolve("captures");
        for (int attempt = 0; attempt < 300; attempt++) {
            Thread.sleep(100);
            try (var files = Files.list(captures)) {
                if (files.anyMatch(f -> f.toFile().length() > 10_000)) {
                    return;
                }
            }
        }
        throw new AssertionError("nothing is being recorded");
    }
}
