package io.github.tapwright.desktop.sound;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.desktop.work.HeldWork;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.sitting.SoundOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Playing without a sound card: the test says when a sound is read and when it ends. */
class PlaybackModelTest {

    private final Notices notices = new Notices(failure -> {
        throw new AssertionError(failure);
    });
    private final HeldWork work = new HeldWork(notices);
    private final Output output = new Output();
    private final PlaybackModel model = new PlaybackModel(output, work, notices, Runnable::run);

    /** A player that goes on until it is told to end; the listener is told of the end later, as by a thread. */
    private static final class Output implements SoundOutput {

        private final List<Consumer<Optional<String>>> overs = new ArrayList<>();
        private boolean unplugged;
        private boolean silent = true;

        @Override
        public void play(Recording sound, double gainDb, Consumer<Optional<String>> over) {
            if (unplugged) {
                throw new RefusedEntryException("plug in headphones");
            }
            overs.add(over);
            silent = false;
        }

        @Override
        public void stop() {
            silent = true;
        }
    }

    @BeforeEach
    void caution() {
        model.acceptCaution();
    }

    private void play(String words) {
        model.play(new PlaybackModel.Asked(
                words, progress -> Recording.of(new SampleRate(48_000), new double[100]), 0, () -> {}));
    }

    @Test
    void aSoundThatEndsWhileTheNextIsReadIsNotSaidToSoundForEver() {
        play("first");
        work.finish();
        play("second");
        output.overs.get(0).accept(Optional.empty());

        assertThat(model.playing().get()).isEmpty();
    }

    @Test
    void theEndOfTheSoundBeforeDoesNotSilenceTheNext() {
        play("first");
        work.finish();
        play("second");
        work.finish();
        output.overs.get(0).accept(Optional.empty());

        assertThat(model.playing().get()).contains("second");
    }

    @Test
    void stoppedBeforeItWasReadItDoesNotSound() {
        play("first");
        work.work();
        model.stop();
        work.deliver();

        assertThat(output.silent).isTrue();
        assertThat(model.playing().get()).isEmpty();
    }

    @Test
    void theLevelIsReadWithATrueMinus() {
        assertThat(model.levelWords()).isEqualTo("Level −20 dB");

        model.levelDb().set(-0.3);

        assertThat(model.levelWords()).isEqualTo("Level 0 dB");
    }

    @Test
    void ofTwoAskedForQuicklyTheLaterOneSounds() {
        play("first");
        play("second");
        work.finish();

        assertThat(output.overs).hasSize(1);
        assertThat(model.playing().get()).contains("second");
    }

    @Test
    void whatCannotBePlayedIsNotSaidToSound() {
        play("first");
        work.finish();
        output.unplugged = true;
        play("second");
        work.finish();

        assertThat(model.playing().get()).isEmpty();
        assertThat(notices.latest().get().orElseThrow().words()).contains("plug in headphones");
    }

    @Test
    void stoppedItDoesNotWaitForTheCautionAnyMore() {
        PlaybackModel fresh = new PlaybackModel(output, work, notices, Runnable::run);
        fresh.play(new PlaybackModel.Asked(
                "first", progress -> Recording.of(new SampleRate(48_000), new double[100]), 0, () -> {}));
        fresh.stop();
        fresh.acceptCaution();
        work.finish();

        assertThat(output.silent).isTrue();
    }
}
