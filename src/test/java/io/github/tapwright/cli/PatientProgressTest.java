package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class PatientProgressTest {

    private final StringWriter text = new StringWriter();
    private final AtomicLong nanoseconds = new AtomicLong();
    private final PatientProgress progress = new PatientProgress(new PrintWriter(text), nanoseconds::get);

    @Test
    void aShortTaskSaysNothing() {
        nanoseconds.set(1_900_000_000L);
        progress.at("reading a.wav", 0, 2);
        assertThat(text.toString()).isEmpty();
    }

    @Test
    void aLongTaskSaysHowFarItHasComeAndLeavesAnEmptyLine() {
        nanoseconds.set(2_100_000_000L);
        progress.at("reading a.wav", 1, 2);
        assertThat(text.toString()).contains("reading a.wav (1 of 2 done)");
        progress.at("done", 2, 2);
        assertThat(text.toString()).endsWith("\r\u001b[K");
    }
}
