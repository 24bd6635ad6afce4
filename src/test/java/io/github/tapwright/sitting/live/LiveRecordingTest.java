package io.github.tapwright.sitting.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A recording into a real archive, from an input that plays invented taps over and over. */
@Timeout(120)
class LiveRecordingTest {

    private static final ShopNumber NUMBER = new ShopNumber("T-17");

    @TempDir
    Path folder;

    /** Sound some times faster than a microphone brings it. */
    private static final class PlayedTaps implements RunningInput {

        private final double[] samples = Invented.taps().channel(0);
        private int at;
        private volatile boolean closed;

        @Override
        public String device() {
            return "invented taps";
        }

        @Override
        public LiveFormat format() {
            return LiveFormat.STANDARD;
        }

        @Override
        public Optional<SoundBlock> next(Duration patience) throws InterruptedException {
            Thread.sleep(4);
            byte[] bytes = new byte[3 * format().rateHz() / 50];
            for (int b = 0; b < bytes.length; b += 3) {
                int value = (int) (samples[at++ % samples.length] * 0x1p23);
                bytes[b] = (byte) value;
                bytes[b + 1] = (byte) (value >> 8);
                bytes[b + 2] = (byte) (value >> 16);
            }
            return Optional.of(new SoundBlock(format(), bytes));
        }

        @Override
        public boolean isOver() {
            return closed;
        }

        @Override
        public List<Loss> losses() {
            return List.of();
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    private static boolean saysThatItCannotFit(LiveView view) {
        return view.taps().notes().stream().anyMatch(n -> n.contains("cannot be fitted any more"));
    }

    @Test
    void aFitThatFailedStaysInSightWhileStrikesAreFollowedOn() throws InterruptedException {
        CaptureNotes notes = new CaptureNotes(
                NUMBER,
                new Procedure.BodyTaps(TapSettings.STANDARD),
                Conditions.UNKNOWN,
                "invented taps",
                LiveFormat.STANDARD,
                Clock.systemUTC().instant());
        try (Archive archive = Archive.open(folder, Clock.systemUTC())) {
            archive.instruments().add(Instrument.of(NUMBER, InstrumentKind.CLASSICAL));
            LiveRecording live =
                    new LiveRecording(new PlayedTaps(), archive.captures().begin(notes), notes, verdicts -> {
                        throw new IllegalStateException("no fit today");
                    });
            LiveView view = live.view();
            while (!saysThatItCannotFit(view) || view.taps().strikes().size() < 6) {
                Thread.sleep(5);
                view = live.view();
            }
            LiveView last = live.stop();

            assertThat(last.taps().notes())
                    .filteredOn(n -> n.contains("no fit today"))
                    .hasSize(1);
            assertThat(last.trouble()).isEmpty();
            assertThat(archive.captures().leftBehind()).singleElement().matches(LeftCapture::finished);
        }
    }
}
