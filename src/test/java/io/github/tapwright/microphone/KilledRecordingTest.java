package io.github.tapwright.microphone;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.LeftCapture;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program while it records, at any moment, and looks what can be recovered.
 *
 * <p>{@code -Dtapwright.recording.kills=200} kills as often as one likes; a summary goes to standard output.
 */
class KilledRecordingTest {

    private static final int KILLS = Integer.getInteger("tapwright.recording.kills", 3);

    @TempDir
    Path folder;

    private double mostLost = Double.NEGATIVE_INFINITY;

    @Test
    void whateverTheMomentOfTheKillAllButTheLastSecondIsRecovered() throws Exception {
        Random random = new Random(20260314);
        Path archive = folder.resolve("archive");
        try (VirtualMicrophone microphone = VirtualMicrophone.start(folder, 48_000)) {
            for (int kill = 0; kill < KILLS; kill++) {
                double seconds = liveAndDie(microphone, archive, 200 + random.nextInt(2500));
                recover(archive, seconds, kill);
            }
        }
        System.out.printf(
                "%d kills of a recording: at most %.2f s less recovered than had been shown%n", KILLS, mostLost);
    }

    /** Records, and is killed some time after it begins; gives how many seconds it had shown to be recorded. */
    private double liveAndDie(VirtualMicrophone microphone, Path archive, int lifeMillis) throws Exception {
        Process program = microphone.java(
                List.of("-Dorg.sqlite.tmpdir=" + folder, "-XX:TieredStopAtLevel=1"),
                SoakMain.class,
                archive.toString(),
                "600",
                "48000",
                "1");
        try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
            assertThat(lines.readLine()).startsWith("recording");
            Thread killer = new Thread(() -> sleepAndKill(program, lifeMillis));
            killer.start();
            double shown = 0;
            for (String line = read(lines); !line.isEmpty(); line = read(lines)) {
                shown = line.startsWith("at ") ? Double.parseDouble(line.substring(3)) : shown;
            }
            killer.join();
            program.waitFor();
            return shown;
        }
    }

    private static String read(BufferedReader lines) {
        try {
            String line = lines.readLine();
            return line == null ? "" : line;
        } catch (IOException e) {
            return ""; // killed in the middle of a line
        }
    }

    private static void sleepAndKill(Process program, int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        program.toHandle().destroyForcibly();
    }

    private void recover(Path folder, double shownSeconds, int earlier) {
        try (Archive archive = Archive.open(folder, Clock.systemUTC())) {
            CaptureStore captures = archive.captures();
            List<LeftCapture> waiting = captures.leftBehind();
            assertThat(waiting).hasSize(earlier + 1);
            LeftCapture last = waiting.get(earlier);
            assertThat(last.finished()).isFalse();
            LeftCapture mended = captures.mend(last.id());
            mostLost = Math.max(mostLost, shownSeconds - mended.seconds());
            assertThat(mended.seconds()).isGreaterThan(shownSeconds - 1);
            // Killed before the first half second was forced to the disk, it may hold nothing, and says so when opened.
            if (mended.frames() > 0) {
                readWhole(mended);
            }
        }
    }

    private static void readWhole(LeftCapture mended) {
        try (OpenedAudio audio = AudioFile.open(mended.file())) {
            assertThat(Recording.readAll(audio, 100_000_000).length()).isEqualTo((int) mended.frames());
            assertThat(audio.notices()).isEmpty();
        }
    }
}
