package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One bit of an archive turned over, as a failing disk or memory does it.
 *
 * <p>{@code -Dtapwright.flips=5000} tries as many places of the database as one likes; a summary goes to standard
 * output.
 */
class FlippedBitTest {

    private static final int FLIPS = Integer.getInteger("tapwright.flips", 150);
    private static final int PAGE_BYTES = 4096;

    @TempDir
    Path folder;

    private Path archive;
    private Path database;
    private Path backup;
    private byte[] sound;
    private List<String> content;

    @BeforeEach
    void fill() throws IOException {
        archive = folder.resolve("archive");
        database = archive.resolve(ArchiveFolder.DATABASE);
        backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(archive)) {
            SittingId id =
                    workshop.add(TestWav.writeRoom(folder.resolve("a.wav"), 1)).id();
            NewAnalysis large = new NewAnalysis(
                    Workshop.CLOCK.instant(), new Findings.OfTaps(TestResults.of(100, 200, "taps-test")));
            workshop.archive.sittings().addAnalysis(id, large);
            workshop.archive
                    .sittings()
                    .addName(id, new GivenName(200, Optional.of("main top"), Workshop.CLOCK.instant()));
            workshop.archive.backUp(backup, Progress.SILENT);
        }
        sound = Files.readAllBytes(database);
        content = DatabaseText.of(database);
    }

    /** What became of a flip. */
    private enum Outcome {
        /** In space that is not in use: all that is kept reads as before. */
        HARMLESS,
        /** The check says so, or the archive does not open and says so. */
        NOTICED,
        /** Something kept is different, and the check calls it clean. */
        UNSEEN
    }

    @Test
    void aFlipInAnOriginalIsNamedAndABackupRepairsIt() throws IOException {
        Random random = new Random(7);
        Path original;
        try (Workshop workshop = Workshop.in(archive)) {
            Original first = workshop.archive
                    .sittings()
                    .find(new SittingId(1))
                    .orElseThrow()
                    .recordings()
                    .get(0)
                    .original();
            original = workshop.archive.sittings().locate(first);
        }
        byte[] bytes = Files.readAllBytes(original);
        for (int i = 0; i < 40; i++) {
            Files.write(original, flipped(bytes, random.nextInt(8 * bytes.length)));
            try (Workshop workshop = Workshop.in(archive)) {
                assertThat(workshop.archive.verify(Progress.SILENT).problems())
                        .singleElement()
                        .asString()
                        .contains(original.toString(), "is damaged", "from a backup");
            }
        }
        restoreIsWhole();
    }

    @Test
    void aFlipInTheDatabaseNeverMakesTheProgramStumble() throws IOException {
        Random random = new Random(20260314);
        Map<Outcome, Integer> count = new EnumMap<>(Outcome.class);
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < FLIPS; i++) {
            int bit = random.nextInt(8 * sound.length);
            Outcome outcome = outcome(bit);
            count.merge(outcome, 1, Integer::sum);
            if (outcome == Outcome.UNSEEN) {
                unseen.add(DatabaseText.difference(content, DatabaseText.of(database)));
            }
        }
        System.out.printf("%d flips in a database of %d bytes: %s%n", FLIPS, sound.length, count);
        unseen.forEach(u -> System.out.println("  unseen: " + u));
        restoreIsWhole();
    }

    @Test
    void aFlipInTheHeadOrInTheHeadOfAnyPageIsNoticedOrHarmless() throws IOException {
        for (int bit = 0; bit < 8 * 100; bit += 7) {
            assertThat(outcome(bit)).as("bit " + bit).isNotEqualTo(Outcome.UNSEEN);
        }
        for (int page = 1; page < sound.length / PAGE_BYTES; page++) {
            for (int bit = 0; bit < 8 * 8; bit += 5) {
                assertThat(outcome(8 * page * PAGE_BYTES + bit)).isNotEqualTo(Outcome.UNSEEN);
            }
        }
        restoreIsWhole();
    }

    private Outcome outcome(int bit) throws IOException {
        Files.deleteIfExists(archive.resolve("tapwright.db-wal"));
        Files.deleteIfExists(archive.resolve("tapwright.db-shm"));
        Files.write(database, flipped(sound, bit));
        try (Archive open = Archive.open(archive, Workshop.CLOCK)) {
            if (!open.verify(Progress.SILENT).clean()) {
                return Outcome.NOTICED;
            }
            open.sittings().list(Optional.empty());
        } catch (ArchiveException e) {
            assertThat(e.getMessage()).containsAnyOf("restore", "verify", "backup", "choose", "newer program");
            return Outcome.NOTICED;
        }
        return DatabaseText.of(database).equals(content) ? Outcome.HARMLESS : Outcome.UNSEEN;
    }

    private static byte[] flipped(byte[] bytes, int bit) {
        byte[] flipped = bytes.clone();
        flipped[bit / 8] ^= (byte) (1 << bit % 8);
        return flipped;
    }

    private void restoreIsWhole() {
        Path restored = folder.resolve("restored");
        assertThat(new Restore(Workshop.CLOCK)
                        .restore(backup, restored, Progress.SILENT)
                        .clean())
                .isTrue();
        assertThat(DatabaseText.of(restored.resolve(ArchiveFolder.DATABASE))).isEqualTo(content);
        try (Workshop workshop = Workshop.in(restored)) {
            Sitting sitting = workshop.archive.sittings().find(new SittingId(1)).orElseThrow();
            assertThat(sitting.analyses()).hasSize(2);
            workshop.add(TestWav.writeRoom(folder.resolve("b.wav"), 2));
        }
    }

    @Test
    void aDamagedDatabaseIsNotBackedUpOverAGoodOne() throws IOException {
        byte[] broken = sound.clone();
        for (int page = 3; page < sound.length / PAGE_BYTES; page++) {
            broken[page * PAGE_BYTES] ^= 0x40;
        }
        Files.write(database, broken);
        try (Archive open = Archive.open(archive, Workshop.CLOCK)) {
            assertThatExceptionOfType(ArchiveException.class)
                    .isThrownBy(() -> open.backUp(folder.resolve("bad.zip"), Progress.SILENT));
        } catch (ArchiveException e) {
            assertThat(e.getMessage()).contains("restore");
        }
        assertThat(folder.resolve("bad.zip")).doesNotExist();
    }
}
