package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A line that says what is being done is gone once it is done, or has failed. */
class ProgressEndsTest {

    private static final Path TAPS = CommandRun.DEMO.resolve("31-2024-04-09-strung.flac");
    private static final String EMPTY_LINE = "\r\u001b[K";

    @TempDir
    Path folder;

    private Path letter;

    @BeforeEach
    void aFileThatIsNoSound() throws IOException {
        letter = Files.writeString(folder.resolve("letter.wav"), "not a sound, whatever its name says");
    }

    @Test
    void whereTheWorkSucceeds() {
        assertEnds(ExitCode.DONE, "instrument", "add", "31", "--archive", archive());
        assertEnds(ExitCode.DONE, "verify", "--archive", archive());
        assertEnds(ExitCode.DONE, "sitting", "add", "31", TAPS, "--archive", archive());
        assertEnds(ExitCode.DONE, "sitting", "reanalyse", "1", "--band", "60:500", "--archive", archive());
        assertEnds(ExitCode.DONE, "report", "1", "--out", folder.resolve("a.html"), "--archive", archive());
        assertEnds(ExitCode.DONE, "backup", folder.resolve("a.zip"), "--archive", archive());
        assertEnds(ExitCode.DONE, "verify", "--archive", archive());
        assertEnds(ExitCode.DONE, "restore", folder.resolve("a.zip"), folder.resolve("again"));
    }

    @Test
    void whereItFails() throws IOException {
        assertEnds(ExitCode.UNREADABLE, "taps", letter);
        assertEnds(ExitCode.UNREADABLE, "taps", letter, letter);
        assertEnds(ExitCode.UNREADABLE, "note", letter);
        assertEnds(ExitCode.UNREADABLE, "fingerboard", letter);
        assertEnds(ExitCode.UNREADABLE, "plucks", letter);
        assertEnds(ExitCode.UNREADABLE, "level", letter);
        assertEnds(ExitCode.DONE, "instrument", "add", "31", "--archive", archive());
        assertEnds(ExitCode.UNREADABLE, "sitting", "add", "31", letter, "--archive", archive());
        assertEnds(ExitCode.UNREADABLE, "calibration", "add", letter, "--level", "94", "--archive", archive());
        assertEnds(ExitCode.WRONG_USE, "report", "9", "--out", folder.resolve("a.html"), "--archive", archive());
        assertEnds(ExitCode.ARCHIVE, "restore", letter, folder.resolve("again"));
    }

    private Path archive() {
        return folder.resolve("archive");
    }

    /** Runs a command before an impatient person; what stands on the last line is nothing, or a complaint. */
    private static void assertEnds(int code, Object... arguments) {
        StringWriter err = new StringWriter();
        PrintWriter errors = new PrintWriter(err, true);
        AtomicLong clock = new AtomicLong();
        PatientProgress progress = new PatientProgress(
                errors, () -> clock.addAndGet(Duration.ofSeconds(3).toNanos()));
        Terminal terminal = new Terminal(new PrintWriter(new StringWriter()), errors, progress);
        String[] line = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);

        int got = Commands.of(new Bench(Clock::systemUTC, Path.of(".")), terminal, line)
                .execute(line);

        String last = err.toString().substring(err.toString().lastIndexOf(EMPTY_LINE) + 1);
        assertThat(got).as(err.toString()).isEqualTo(code);
        assertThat(last.replace(EMPTY_LINE.substring(1), ""))
                .as(String.join(" ", line))
                .matches("(?s)|tapwright: .*");
    }
}
