package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.SoundBlock;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The computer's clock jumps back by a year, as one with an empty battery does. */
class ClockBackwardsTest {

    private static final Clock NOW = Workshop.CLOCK;
    private static final Clock BACK = Clock.offset(NOW, Duration.ofDays(-365));
    private static final Procedure TAPS = new Procedure.BodyTaps(TapSettings.STANDARD);

    @TempDir
    Path folder;

    private Path place;

    @BeforeEach
    void make() {
        place = folder.resolve("archive");
        try (Archive archive = Archive.open(place, NOW)) {
            archive.instruments().add(Instrument.of(Workshop.NUMBER, InstrumentKind.CLASSICAL));
        }
    }

    private Sitting add(Clock clock, long seed) {
        return add(clock, seed, Optional.empty());
    }

    private Sitting add(Clock clock, long seed, Optional<Moment> taken) {
        Path sound = TestWav.writeRoom(folder.resolve(seed + ".wav"), seed);
        try (Archive archive = Archive.open(place, clock)) {
            return new AddSitting(
                            archive.instruments(), archive.sittings(), archive.calibrations(), TestWav.source(), clock)
                    .add(
                            new SittingRequest(Workshop.NUMBER, taken, Conditions.UNKNOWN, List.of(sound), TAPS),
                            Progress.SILENT);
        }
    }

    @Test
    void sittingsGetNewNumbersAndNoneReplacesAnother() {
        List<Sitting> added = List.of(add(NOW, 1), add(BACK, 2), add(NOW, 3));

        assertThat(added).extracting(s -> s.id().number()).containsExactly(1L, 2L, 3L);
        try (Archive archive = Archive.open(place, BACK)) {
            for (Sitting sitting : added) {
                assertThat(archive.sittings().find(sitting.id())).contains(sitting);
            }
            assertThat(archive.sittings().list(Optional.empty()))
                    .extracting(s -> s.id().number())
                    .containsExactly(2L, 1L, 3L);
            assertThat(archive.verify(Progress.SILENT).problems()).isEmpty();
        }
    }

    @Test
    void aDayThatTheArchiveShowsToBePastIsNotRefused() {
        add(NOW, 1);
        Moment yesterday = Moment.at(NOW.instant().minus(Duration.ofDays(1)));

        assertThat(add(BACK, 2, Optional.of(yesterday)).takenAt()).isEqualTo(yesterday);
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() ->
                        add(BACK, 3, Optional.of(Moment.at(NOW.instant().plus(Duration.ofDays(3))))))
                .withMessageContaining("set the computer's clock right");
    }

    @Test
    void theLastAnalysisAndTheLastNameHoldWhateverTheirTimes() {
        Sitting sitting = add(NOW, 1);
        TapResult result = TestResults.of(100, 200, "taps-test");
        try (Archive archive = Archive.open(place, BACK)) {
            archive.sittings().addAnalysis(sitting.id(), new NewAnalysis(BACK.instant(), new Findings.OfTaps(result)));
            archive.sittings().addName(sitting.id(), new GivenName(200, Optional.of("first"), NOW.instant()));
            archive.sittings().addName(sitting.id(), new GivenName(200, Optional.of("second"), BACK.instant()));

            Sitting kept = archive.sittings().find(sitting.id()).orElseThrow();
            assertThat(kept.latest().taps()).contains(result);
            assertThat(kept.resonances(kept.latest()))
                    .anyMatch(r -> r.name().equals(Optional.of("second")))
                    .noneMatch(r -> r.name().equals(Optional.of("first")));
        }
    }

    @Test
    void recordingsOfTheSameSecondHaveFilesOfTheirOwn() {
        try (Archive archive = Archive.open(place, BACK)) {
            for (Clock clock : List.of(NOW, BACK, NOW, BACK)) {
                record(archive, clock);
            }
            assertThat(archive.captures().leftBehind())
                    .hasSize(4)
                    .extracting(LeftCapture::file)
                    .doesNotHaveDuplicates();
            assertThat(archive.captures().leftBehind())
                    .extracting(LeftCapture::frames)
                    .containsOnly(480L);
        }
    }

    private static void record(Archive archive, Clock clock) {
        LiveFormat format = new LiveFormat(48_000, 1, 16);
        CaptureNotes notes =
                new CaptureNotes(Workshop.NUMBER, TAPS, Conditions.UNKNOWN, "a microphone", format, clock.instant());
        try (Capture capture = archive.captures().begin(notes)) {
            capture.append(new SoundBlock(format, new byte[960]));
        }
    }

    @Test
    void noCopyMadeBeforeAMigrationReplacesAnother() throws IOException {
        Path old = folder.resolve("old");
        List<Migration> known = Migration.known();
        Archive.open(old, NOW, known.subList(0, 8)).close();
        Archive.open(old, NOW, known.subList(0, 9)).close();
        Archive.open(old, BACK, known).close();

        try (Stream<Path> backups = Files.list(old.resolve("backups"))) {
            assertThat(backups).hasSize(known.size() - 8);
        }
    }
}
