package io.github.tapwright.level;

import io.github.tapwright.level.band.BandMeter;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.level.loudness.LoudnessMeter;
import io.github.tapwright.level.loudness.LoudnessResult;
import io.github.tapwright.level.loudness.NoLoudness;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.FullScaleRun;
import java.util.Optional;

/** All the meters of one channel side by side. */
final class ChannelMeter {

    private final LevelSettings settings;
    private final SoundLevelMeter soundLevels;
    private final BandMeter bands;
    private final Optional<LoudnessMeter> loudness;
    private final FullScaleRun fullScale = new FullScaleRun();

    ChannelMeter(SampleRate rate, LevelSettings settings) {
        this.settings = settings;
        this.soundLevels = new SoundLevelMeter(rate);
        this.bands = new BandMeter(Bandwidth.THIRD_OCTAVE, rate);
        this.loudness = settings.reference() instanceof Calibration calibration && LoudnessMeter.accepts(rate)
                ? Optional.of(new LoudnessMeter(rate, calibration.fullScaleLevelDb(), settings.field()))
                : Optional.empty();
    }

    void take(double[] block, int count) {
        for (int n = 0; n < count; n++) {
            fullScale.take(block[n]);
        }
        soundLevels.take(block, count);
        bands.take(block, count);
        loudness.ifPresent(meter -> meter.take(block, count));
    }

    long clippedSamples() {
        return fullScale.clippedSamples();
    }

    ChannelLevels finish() {
        return new ChannelLevels(
                soundLevels.levels(settings.reference()),
                bands.powers().stream()
                        .filter(p -> p.meanSquare() > 0)
                        .map(p -> new BandLevel(p.band(), settings.reference().levelOf(p.meanSquare())))
                        .toList(),
                loudness.map(LoudnessMeter::finish).orElseGet(this::noLoudness));
    }

    private LoudnessResult noLoudness() {
        return new NoLoudness(
                settings.reference() instanceof FullScale
                        ? "loudness in sone needs sound pressure; record a calibrator of 94 or 114 dB at the same gain"
                        : "loudness in sone needs a whole sample rate from 36000 Hz; record at 44.1 or 48 kHz");
    }
}
