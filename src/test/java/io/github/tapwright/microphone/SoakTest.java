package io.github.tapwright.microphone;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Records at 96 kHz in stereo while taps are followed, and looks whether a single sample is missing.
 *
 * <p>One channel holds taps, the other counts samples in its lowest bits, so that the recording itself tells what is
 * missing, whatever the program says. {@code -Dtapwright.soak=1800} makes it half an hour; a summary goes to standard
 * output.
 */
class SoakTest {

    private static final int RATE_HZ = 96_000;
    private static final double SECONDS = Integer.getInteger("tapwright.soak", 12);
    private static final int COUNTED = 1 << 16;
    private static final int HEAD_BYTES = 80;

    @TempDir
    Path folder;

    @Test
    void notASampleIsMissingWhileTapsAreFollowed() throws Exception {
        Path archive = folder.resolve("archive");
        List<String> said = new ArrayList<>();
        try (VirtualMicrophone microphone = VirtualMicrophone.start(folder, RATE_HZ)) {
            Process player = microphone.playRaw(RATE_HZ);
            Thread feeder = new Thread(() -> feed(player));
            feeder.start();
            Process program = microphone.java(
                    List.of("-Xmx512m", "-Dorg.sqlite.tmpdir=" + folder),
                    SoakMain.class,
                    archive.toString(),
                    Double.toString(SECONDS),
                    Integer.toString(RATE_HZ),
                    "2");
            try (BufferedReader lines = program.inputReader(StandardCharsets.UTF_8)) {
                lines.lines().forEach(said::add);
            }
            assertThat(program.waitFor()).isZero();
            player.destroyForcibly();
            feeder.join();
        }
        Count count = count(onlyCapture(archive));
        report(said, count);
        assertThat(said).noneMatch(l -> l.startsWith("trouble"));
        assertThat(said).anyMatch(l -> l.startsWith("recorded") && l.contains(" losses 0 "));
        assertThat(count.missing()).isZero();
        assertThat(count.counted() / (double) RATE_HZ).isGreaterThan(SECONDS - 3);
        assertThat(said.stream().filter(l -> l.startsWith("strike")).count()).isGreaterThan((long) (SECONDS / 2) - 5);
    }

    private static void report(List<String> said, Count count) {
        double[] delays = said.stream()
                .filter(l -> l.startsWith("strike"))
                .skip(1) // the first comes while the program still starts
                .mapToDouble(l -> Double.parseDouble(l.substring(l.lastIndexOf(' '))))
                .sorted()
                .toArray();
        said.stream().filter(l -> l.matches("(recorded|loss|trouble).*")).forEach(System.out::println);
        System.out.printf(
                "soak: %d samples of each channel counted one by one, %d missing, %d of silence; verdict and curve after"
                        + " the window's end: median %.0f ms, 95 %% within %.0f ms, longest %.0f ms%n",
                count.counted(),
                count.missing(),
                count.silent(),
                delays[delays.length / 2],
                delays[(int) (0.95 * delays.length)],
                delays[delays.length - 1]);
    }

    private static Path onlyCapture(Path archive) throws IOException {
        try (Stream<Path> files = Files.list(archive.resolve("captures"))) {
            return files.filter(f -> f.toString().endsWith(".wav")).findFirst().orElseThrow();
        }
    }

    private static void feed(Process player) {
        double[] taps = taps();
        byte[] second = new byte[6 * RATE_HZ];
        long n = 0;
        try (OutputStream out = new BufferedOutputStream(player.getOutputStream(), second.length)) {
            while (true) {
                for (int i = 0; i < RATE_HZ; i++, n++) {
                    put(second, 6 * i, (int) Math.rint(taps[(int) (n % taps.length)] * 0x7FFFFF));
                    put(second, 6 * i + 3, 1 + (int) (n % COUNTED));
                }
                out.write(second);
            }
        } catch (IOException e) {
            return; // the player was told to stop
        }
    }

    private static void put(byte[] bytes, int at, int value) {
        bytes[at] = (byte) value;
        bytes[at + 1] = (byte) (value >> 8);
        bytes[at + 2] = (byte) (value >> 16);
    }

    /** Two seconds with one tap of three decaying tones over a little noise. */
    private static double[] taps() {
        double[] x = new double[2 * RATE_HZ];
        Random random = new Random(5);
        for (int n = 0; n < x.length; n++) {
            x[n] = 2e-5 * random.nextGaussian();
            double t = (n - 0.5 * RATE_HZ) / RATE_HZ;
            if (t >= 0) {
                x[n] += 0.2 * Math.exp(-22 * t) * Math.sin(2 * Math.PI * 101 * t)
                        + 0.2 * Math.exp(-30 * t) * Math.sin(2 * Math.PI * 196 * t)
                        + 0.1 * Math.exp(-35 * t) * Math.sin(2 * Math.PI * 233 * t)
                        + 0.2 * Math.exp(-3000 * t);
            }
        }
        return x;
    }

    private record Count(long counted, long missing, long silent) {}

    /** Follows the counting channel through the file; silence is what the player had nothing to give for. */
    private static Count count(Path file) throws IOException {
        long counted = 0;
        long missing = 0;
        long silent = 0;
        int before = 0;
        byte[] block = new byte[6 * RATE_HZ];
        try (var in = Files.newInputStream(file)) {
            in.skipNBytes(HEAD_BYTES);
            for (int length = in.readNBytes(block, 0, block.length);
                    length > 0;
                    length = in.readNBytes(block, 0, block.length)) {
                for (int at = 3; at + 2 < length; at += 6) {
                    int value = (block[at] & 0xFF) | ((block[at + 1] & 0xFF) << 8) | (block[at + 2] << 16);
                    if (value == 0) {
                        silent++;
                        continue;
                    }
                    if (before > 0) {
                        missing += Math.floorMod(value - before - 1, COUNTED);
                    }
                    before = value;
                    counted++;
                }
            }
        }
        return new Count(counted, missing, silent);
    }
}
