package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LevelNow;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.sitting.live.TapsSoFar;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a maker reads while a recording runs. */
class LiveLineTest {

    private static final CaptureNotes NOTES = new CaptureNotes(
            new ShopNumber("31"),
            new Procedure.BodyTaps(TapSettings.STANDARD),
            Conditions.UNKNOWN,
            "a microphone",
            LiveFormat.STANDARD,
            Instant.parse("2026-03-14T09:26:53Z"));

    @Test
    void levelsAndStrikesAreReadWithATrueMinus() {
        StringWriter read = new StringWriter();
        Terminal watched = new Terminal(new PrintWriter(read), new PrintWriter(read), (step, done, total) -> {});
        LevelNow level = new LevelNow(Optional.of(-12.4), Optional.of(-30.0), Optional.of(-61.0), false, List.of());
        TapsSoFar taps = new TapsSoFar(
                List.of(new Strike(0, 1.52, -9.6, 40, List.of())), Optional.empty(), List.of(), 1, List.of());

        new LiveLine(watched, NOTES).show(new LiveView(2, level, taps, List.of(), true, Optional.empty()));

        assertThat(read.toString()).contains("strike 1 at 1.5 s, −10 dBFS: used", "] −12 dBFS, 1 of 1 strike");
    }
}
