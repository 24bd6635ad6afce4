package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program that adds sittings, again and again, and looks whether anything got lost.
 *
 * <p>{@code -Dtapwright.kills=1000} kills as often as one likes; a summary goes to standard output.
 */
class KillTest {

    private static final int KILLS = Integer.getInteger("tapwright.kills", 50);

    /** A fresh archive every so often, because each look reads all of it. */
    private static final int KILLS_OF_ONE_ARCHIVE = 25;

    @TempDir
    Path folder;

    private long kept;
    private long reported;
    private long leftOver;

    @Test
    void whateverTheMomentOfTheKillNoSittingIsHalfAndNoneIsLost() throws Exception {
        Random random = new Random(20260314);
        Path sounds = Files.createDirectory(folder.resolve("sounds"));
        for (int kill = 0; kill < KILLS; kill += KILLS_OF_ONE_ARCHIVE) {
            Path archive = folder.resolve("archive-" + kill);
            killAgainAndAgain(archive, sounds, kill, random);
        }
        System.out.printf(
                "%d kills: %d sittings kept, %d of them reported before a kill; %d files left over, nothing lost%n",
                KILLS, kept, reported, leftOver);
        assertThat(reported).isPositive();
    }

    private void killAgainAndAgain(Path archive, Path sounds, int firstKill, Random random) throws Exception {
        Workshop.in(archive).close();
        Set<Long> said = new HashSet<>();
        Look last = new Look(0, 0);
        for (int kill = firstKill; kill < Math.min(KILLS, firstKill + KILLS_OF_ONE_ARCHIVE); kill++) {
            said.addAll(liveAndDie(archive, sounds, 1_000_000L * kill, 5 + random.nextInt(396)));
            last = look(archive, said, last.sittings());
        }
        kept += last.sittings();
        reported += said.size();
        leftOver += last.leftOver();
    }

    /** One life of the program: started, killed some time after it is ready; gives the numbers it reported. */
    private List<Long> liveAndDie(Path archive, Path sounds, long seed, int lifeMillis) throws Exception {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Dorg.sqlite.tmpdir=" + sounds,
                        "-cp",
                        DisturbedJob.classPath(),
                        AddSittingMain.class.getName(),
                        archive.toString(),
                        sounds.toString(),
                        Long.toString(seed))
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader said = child.inputReader(StandardCharsets.UTF_8)) {
            assertThat(said.readLine()).isEqualTo("ready");
            child.waitFor(lifeMillis, TimeUnit.MILLISECONDS);
            // By its handle, because Process.destroyForcibly would throw away what the program said last.
            child.toHandle().destroyForcibly();
            child.waitFor();
            return said.lines()
                    .filter(line -> line.matches("kept [0-9]+"))
                    .map(line -> Long.valueOf(line.substring(5)))
                    .toList();
        }
    }

    /** What one look at the archive found. */
    private record Look(int sittings, int leftOver) {}

    private static Look look(Path folder, Set<Long> said, int sittingsBefore) {
        try (Archive archive = Archive.open(folder, Workshop.CLOCK)) {
            VerifyReport report = archive.verify(Progress.SILENT);
            assertThat(report.problems()).isEmpty();
            List<SittingSummary> sittings = archive.sittings().list(Optional.empty());
            assertThat(sittings).extracting(s -> s.id().number()).containsAll(said);
            assertThat(sittings).extracting(SittingSummary::recordingCount).allMatch(n -> n == 2);
            for (SittingSummary summary : sittings.subList(sittingsBefore, sittings.size())) {
                readWhole(archive, summary.id());
            }
            return new Look(
                    sittings.size(),
                    report.unreferenced().size() + report.temporary().size());
        }
    }

    private static void readWhole(Archive archive, SittingId id) {
        Sitting sitting = archive.sittings().find(id).orElseThrow();
        assertThat(sitting.analyses()).hasSizeBetween(1, 2);
        assertThat(sitting.analyses().stream().skip(1).map(a -> a.taps().orElseThrow()))
                .allMatch(result -> result.equals(AddSittingMain.RESULT));
        for (KeptRecording recording : sitting.recordings()) {
            assertThat(archive.sittings().locate(recording.original())).isRegularFile();
        }
    }
}
