package io.github.tapwright.bench;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.comparison.group.GroupSettings;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ShelfPlace;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingSummary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * An archive of 10,000 sittings on 250 instruments: the shelf, lists, comparisons and trends.
 *
 * <p>Wanted: the shelf in 100 ms, any comparison or trend in 300 ms. The heap is the launcher's.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 1,
        jvmArgsAppend = {"-Xmx512m", "-XX:+UseSerialGC"})
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class ArchiveBenchmark {

    private Optional<Path> folder = Optional.empty();
    private Optional<Archive> opened = Optional.empty();

    /** Makes the archive; opening it makes its digests. */
    @Setup(Level.Trial)
    public void make() throws IOException, SQLException {
        Path made = Files.createTempDirectory("tapwright-bench");
        folder = Optional.of(made);
        BigArchive.make(made);
        long before = System.nanoTime();
        opened = Optional.of(Archive.open(made.resolve("archive"), Clock.systemUTC()));
        System.out.printf("upgraded in %.1f s%n", (System.nanoTime() - before) / 1e9);
    }

    /** Takes it away again. */
    @TearDown(Level.Trial)
    public void remove() throws IOException {
        archive().close();
        try (Stream<Path> all = Files.walk(folder.orElseThrow())) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private Archive archive() {
        return opened.orElseThrow();
    }

    private StudyBench bench() {
        return new StudyBench(archive().sittings(), archive().benchStudies(), Clock.systemUTC());
    }

    private StudyPlaying playing() {
        return new StudyPlaying(archive().sittings(), archive().benchStudies(), Clock.systemUTC());
    }

    /** Every instrument with its last sitting. */
    @Benchmark
    public List<ShelfPlace> shelf() {
        return new ListInstruments(archive().instruments()).shelf();
    }

    /** Every sitting on one line. */
    @Benchmark
    public List<SittingSummary> allSittings() {
        return new ListSittings(archive().instruments(), archive().sittings()).all();
    }

    /** What all questions about many sittings begin with. */
    @Benchmark
    public List<SittingOutline> allOutlines() {
        return archive().sittings().outlines(Optional.empty());
    }

    /** The latest sittings of two instruments, with the bench's study. */
    @Benchmark
    public CompareSittings.Compared compareTwo() {
        CompareSittings compare = new CompareSittings(archive().sittings(), bench());
        return compare.compare(
                compare.latest(BigArchive.SOME),
                compare.latest(BigArchive.ANOTHER),
                new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.empty()));
    }

    /** Three constructions, all 10,000 sittings. */
    @Benchmark
    public GroupStudy compareGroups() {
        return new CompareGroups(archive().instruments(), archive().sittings())
                .compare(new GroupSettings(GroupBy.CONSTRUCTION, StageClass.STRUNG));
    }

    /** One instrument through its 40 sittings. */
    @Benchmark
    public History trend() {
        return new FollowInstrument(archive().instruments(), archive().sittings(), bench(), playing(), ZoneOffset.UTC)
                .follow(BigArchive.SOME, Optional.empty(), ShopWindow.USUAL);
    }
}
