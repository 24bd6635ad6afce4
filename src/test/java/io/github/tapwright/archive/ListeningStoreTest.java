package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningAnswer;
import io.github.tapwright.sitting.listening.ListeningId;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.sitting.listening.ListeningStore;
import io.github.tapwright.sitting.listening.ListeningTrial;
import io.github.tapwright.sitting.listening.NewListening;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Blind listenings come back as they were kept, answer by answer, also through a backup. */
class ListeningStoreTest {

    private static final Instant START = Instant.parse("2026-03-14T10:00:00.25Z");

    @TempDir
    Path folder;

    private static NewListening begun(Sitting first, Sitting second) {
        return new NewListening(
                START,
                -8_123_456_789_012_345_678L,
                12,
                MatchedBy.INTEGRATED,
                0.987,
                List.of(
                        new HeardSound(Stretch.ofRecording(first, 0), -23.456, -1.25),
                        new HeardSound(Stretch.ofRecording(second, 0), -24.706, 0)),
                Optional.of("the maker"),
                Optional.empty());
    }

    private static ListeningAnswer answer(int number, boolean xIsA, boolean saidA) {
        return new ListeningAnswer(
                number, new ListeningTrial(1, 0, xIsA), saidA, 5 + number, START.plusSeconds(20L * number));
    }

    private ListeningId fill(Path archive) {
        try (Workshop workshop = Workshop.in(archive)) {
            Sitting first = workshop.add(TestWav.write(folder.resolve("a.wav"), 1));
            Sitting second = workshop.add(TestWav.write(folder.resolve("b.wav"), 2));
            ListeningStore store = workshop.archive.listenings();
            ListeningId id = store.begin(begun(first, second));
            store.add(id, answer(0, true, true));
            store.add(id, answer(1, false, true));
            return id;
        }
    }

    @Test
    void everyAnswerIsThereAgainWithWhatWasAsked() {
        ListeningId id = fill(folder.resolve("archive"));

        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            ListeningSession kept = workshop.archive.listenings().find(id).orElseThrow();
            Sitting first = workshop.archive
                    .sittings()
                    .find(kept.setUp().sounds().get(0).stretch().sitting())
                    .orElseThrow();
            Sitting second = workshop.archive
                    .sittings()
                    .find(kept.setUp().sounds().get(1).stretch().sitting())
                    .orElseThrow();
            assertThat(kept)
                    .isEqualTo(new ListeningSession(
                            id, begun(first, second), List.of(answer(0, true, true), answer(1, false, true))));
            assertThat(kept.rightCount()).isEqualTo(1);
            assertThat(kept.finished()).isFalse();
            assertThat(workshop.archive.listenings().all()).containsExactly(kept);
            assertThat(workshop.archive.listenings().find(new ListeningId(99))).isEmpty();
        }
    }

    @Test
    void anAnswerIsNeverChanged() {
        ListeningId id = fill(folder.resolve("archive"));

        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            ListeningStore store = workshop.archive.listenings();
            assertThatExceptionOfType(ArchiveException.class).isThrownBy(() -> store.add(id, answer(1, false, false)));
            assertThat(store.find(id).orElseThrow().answers().get(1).saidA()).isTrue();
        }
    }

    @Test
    void aBackupHoldsThemAndTheCheckFindsNothingWrong() {
        ListeningId id = fill(folder.resolve("archive"));
        Path backup = folder.resolve("backup.zip");
        ListeningSession before;
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            before = workshop.archive.listenings().find(id).orElseThrow();
            assertThat(workshop.archive.verify(Progress.SILENT).clean()).isTrue();
            workshop.archive.backUp(backup, Progress.SILENT);
        }

        new Restore(Workshop.CLOCK).restore(backup, folder.resolve("restored"), Progress.SILENT);

        try (Workshop workshop = Workshop.in(folder.resolve("restored"))) {
            assertThat(workshop.archive.listenings().all()).containsExactly(before);
        }
    }

    @Test
    void anOlderArchiveGetsRoomForThem() {
        Path old = folder.resolve("old");
        List<Migration> before =
                Migration.known().stream().filter(m -> m.version() < 10).toList();
        Workshop.in(old, before).close();

        try (Workshop workshop = Workshop.in(old)) {
            assertThat(workshop.archive.listenings().all()).isEmpty();
        }
    }
}
