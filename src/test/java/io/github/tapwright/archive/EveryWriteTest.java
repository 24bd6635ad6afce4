package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.tapwright.archive.DisturbedJob.Disturbance;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Everything the program writes, disturbed at the point of one write after another: killed there, killed
 * half way through it, or the disk is full from there on, or that one write fails.
 *
 * <p>{@code -Dtapwright.writes.every=1} tries every write instead of a few, {@code -Dtapwright.writes.jobs=ADD} and
 * {@code -Dtapwright.writes.how=KILL,TORN} choose; a line for each job and disturbance goes to standard output.
 */
class EveryWriteTest {

    private static final int EVERY = Integer.getInteger("tapwright.writes.every", 40);
    private static final List<String> JOBS = words("tapwright.writes.jobs", "ADD,RECORD,SLIPS");
    private static final List<String> HOW = words("tapwright.writes.how", "KILL,FULL");
    private static final int KILLED = 137;
    private static final int ARCHIVE_TROUBLE = 4;

    private static List<String> words(String property, String otherwise) {
        return List.of(System.getProperty(property, otherwise).split(","));
    }

    @TempDir
    Path folder;

    @TempDir
    static Path tools;

    private long reported;
    private long leftOver;
    private long ended;

    @BeforeAll
    static void compile() {
        assumeTrue(DisturbedJob.compile(tools.resolve("disturb.so")), "needs Linux and a C compiler");
    }

    static Stream<Arguments> jobs() {
        return JOBS.stream()
                .flatMap(job -> HOW.stream().map(how -> Arguments.of(WriteJob.valueOf(job), Disturbance.valueOf(how))));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void whereverItIsDisturbedNothingIsHalfAndNothingIsLost(WriteJob job, Disturbance disturbance) throws Exception {
        Path place = folder.resolve("place");
        DisturbedJob disturbed = new DisturbedJob(tools.resolve("disturb.so"), job, place);
        fresh(job, place);
        assertThat(disturbed.run(disturbance, 0).code()).isZero();
        List<String> writes = disturbed.writes();
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (int at = 1; at <= writes.size(); at += EVERY) {
            fresh(job, place);
            tried++;
            DisturbedJob.End end = disturbed.run(disturbance, at);
            try {
                look(job, place, disturbance, end);
            } catch (AssertionError | RuntimeException e) {
                wrong.add(at + ", " + writes.get(at - 1) + ": " + end + ": " + e);
            }
        }
        System.out.printf(
                "%s, %s: %d of %d writes disturbed, %d programs ended by it, %d reports, all true; %d files left over;"
                        + " %d wrong%n",
                job, disturbance, tried, writes.size(), ended, reported, leftOver, wrong.size());
        assertThat(wrong).isEmpty();
    }

    /** Every write takes 20 ms longer, every wait for the disk 200 ms. */
    @ParameterizedTest
    @MethodSource("slowJobs")
    void onASlowDiskItIsSlowAndNothingElse(WriteJob job) throws Exception {
        Path place = folder.resolve("place");
        fresh(job, place);
        DisturbedJob slowed = new DisturbedJob(tools.resolve("disturb.so"), job, place);
        long start = System.nanoTime();
        DisturbedJob.End end = slowed.run(Disturbance.SLOW, 0);
        System.out.printf(
                "%s, SLOW: %d writes, %.0f s%n", job, slowed.writes().size(), (System.nanoTime() - start) / 1e9);
        assertThat(end.code()).isZero();
        look(job, place, Disturbance.SLOW, end);
    }

    static Stream<WriteJob> slowJobs() {
        return JOBS.stream().map(WriteJob::valueOf);
    }

    private static void fresh(WriteJob job, Path place) throws IOException {
        if (Files.exists(place)) {
            List<Path> deepestFirst;
            try (Stream<Path> paths = Files.walk(place)) {
                deepestFirst = paths.sorted(Comparator.reverseOrder()).toList();
            }
            for (Path path : deepestFirst) {
                Files.delete(path);
            }
        }
        job.prepare(Files.createDirectory(place));
    }

    private void look(WriteJob job, Path place, Disturbance disturbance, DisturbedJob.End end) throws IOException {
        if (disturbance.ends()) {
            assertThat(end.code()).isEqualTo(KILLED);
        } else {
            assertThat(end.code()).isIn(0, ARCHIVE_TROUBLE);
        }
        ended += end.code() == 0 ? 0 : 1;
        Kept kept = new Kept();
        for (String line : end.lines()) {
            String[] words = line.split(" ", 2);
            switch (words[0]) {
                case "kept" -> kept.sittings.add(Long.valueOf(words[1]));
                case "done" -> assertThat(place.resolve(words[1])).exists();
                default -> assertThat(words[0]).isEqualTo("trouble");
            }
        }
        reported += end.lines().stream().filter(l -> !l.startsWith("trouble")).count();
        if (job != WriteJob.CREATE && job != WriteJob.MIGRATE) {
            kept.sittings.add(1L);
        }
        lookAtArchive(place, kept);
        again(job, place, kept);
    }

    /** What must be there. */
    private static final class Kept implements WriteJob.Said {

        private final List<Long> sittings = new ArrayList<>();

        @Override
        public void kept(SittingId id) {
            sittings.add(id.number());
        }

        @Override
        public void done(String name) {
            assertThat(name).isNotEmpty();
        }
    }

    private void lookAtArchive(Path place, Kept kept) {
        try (Workshop workshop = Workshop.in(WriteJob.archive(place))) {
            VerifyReport report = workshop.archive.verify(Progress.SILENT);
            assertThat(report.problems()).isEmpty();
            leftOver += report.unreferenced().size() + report.temporary().size();
            List<SittingSummary> sittings = workshop.archive.sittings().list(Optional.empty());
            assertThat(sittings).extracting(s -> s.id().number()).containsAll(kept.sittings);
            sittings.forEach(s -> readWhole(workshop.archive, s.id()));
        }
    }

    private static void readWhole(Archive archive, SittingId id) {
        Sitting sitting = archive.sittings().find(id).orElseThrow();
        assertThat(sitting.analyses()).isNotEmpty();
        for (KeptRecording recording : sitting.recordings()) {
            assertThat(archive.sittings().locate(recording.original())).isRegularFile();
        }
    }

    /** With the fault gone the same job succeeds, after what was half done was cleared away as a maker would. */
    private void again(WriteJob job, Path place, Kept kept) throws IOException {
        Files.deleteIfExists(place.resolve("copy.zip"));
        Path restored = place.resolve("again");
        if (Files.exists(restored)) {
            Files.move(restored, place.resolve("restored before"));
        }
        job.run(place, kept);
        if (job == WriteJob.RECORD) {
            keepWhatWaits(place);
        }
        lookAtArchive(place, kept);
    }

    /** Wherever a keeping was cut off, keeping again leaves each recording in one sitting. */
    private static void keepWhatWaits(Path place) {
        try (Workshop workshop = Workshop.in(WriteJob.archive(place))) {
            workshop.archive.captures().leftBehind().stream()
                    .filter(left -> left.frames() > 0)
                    .forEach(left -> workshop.keepCapture().keep(left.id(), n -> n, Progress.SILENT));
            List<SittingSummary> sittings = workshop.archive.sittings().list(Optional.empty());
            assertThat(sittings)
                    .extracting(s -> workshop.archive
                            .sittings()
                            .find(s.id())
                            .orElseThrow()
                            .recordings()
                            .get(0))
                    .extracting(KeptRecording::fileName)
                    .doesNotHaveDuplicates();
        }
    }
}
