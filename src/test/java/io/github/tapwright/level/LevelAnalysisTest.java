package io.github.tapwright.level;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.level.loudness.NoLoudness;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import org.junit.jupiter.api.Test;

class LevelAnalysisTest {

    private static final SampleRate RATE = new SampleRate(44_100);

    private static Recording tone(double rateHz, double seconds) {
        return Recording.of(new SampleRate(rateHz), Sound.sine(rateHz, seconds, 1000, -20));
    }

    private static Calibration calibration() {
        return (Calibration) CalibrationCheck.of(Sound.sine(44_100, 5, 1000, -6), RATE, CalibratorTone.classOne(114));
    }

    @Test
    void withoutACalibrationLevelsAreRelativeAndSayTheyAre() {
        LevelReport report = LevelAnalysis.of(tone(44_100, 4).stream(), LevelSettings.RELATIVE);
        ChannelLevels channel = report.channels().get(0);
        SoundLevels levels = channel.soundLevels().orElseThrow();
        assertThat(levels.laeq().levelDb()).isCloseTo(-23.01, within(0.02));
        assertThat(levels.laeq().reference()).isEqualTo(new FullScale());
        assertThat(levels.laeq().reference().unit()).isEqualTo("dB re full scale");
        assertThat(report.warnings()).anyMatch(w -> w.contains("relative"));
        assertThat(channel.loudness())
                .isInstanceOfSatisfying(
                        NoLoudness.class, no -> assertThat(no.reason()).contains("calibrator"));
        assertThat(report.programme().orElseThrow().integratedLufs().orElseThrow())
                .isCloseTo(-23, within(0.05));
        assertThat(report.durationSeconds()).isEqualTo(4);
        assertThat(report.methodVersion()).isEqualTo(LevelAnalysis.METHOD_VERSION);
    }

    /** The calibrator of 114 dB peaks at −6 dB, the tone 14 dB below: 100 dB SPL. */
    @Test
    void aCalibrationMakesThemSoundPressureLevels() {
        LevelReport report = LevelAnalysis.of(tone(44_100, 4).stream(), LevelSettings.calibrated(calibration()));
        ChannelLevels channel = report.channels().get(0);
        SoundLevels levels = channel.soundLevels().orElseThrow();
        assertThat(levels.laeq().levelDb()).isCloseTo(100, within(0.02));
        // the sine's own peak is 103.01 dB; its sudden start overshoots in the high passes of C
        assertThat(levels.lcPeak().levelDb()).isBetween(103.0, 103.4);
        assertThat(levels.laeq().reference()).isInstanceOf(Calibration.class);
        BandLevel band = channel.thirdOctaves().stream()
                .filter(b -> b.band().nominalHz() == 1000)
                .findFirst()
                .orElseThrow();
        assertThat(band.level().levelDb()).isCloseTo(100, within(0.05));
        // 1 kHz at 100 dB is 100 phon by definition; the method gives it within a phon
        assertThat(channel.loudness())
                .isInstanceOfSatisfying(
                        HeardLoudness.class,
                        heard -> assertThat(heard.exceededFivePercentPhon()).isCloseTo(100, within(1.0)));
        assertThat(report.warnings()).isEmpty();
    }

    @Test
    void channelsAreMeasuredEachByItself() {
        double[] loud = Sound.sine(44_100, 2, 1000, -10);
        Recording stereo = Recording.of(RATE, loud, new double[loud.length]);
        LevelReport report = LevelAnalysis.of(stereo.stream(), LevelSettings.RELATIVE);
        assertThat(report.channels()).hasSize(2);
        assertThat(report.channels().get(0).soundLevels()).isPresent();
        assertThat(report.channels().get(1).soundLevels()).isEmpty();
        assertThat(report.channels().get(1).thirdOctaves()).isEmpty();
    }

    @Test
    void whatTheReaderMustKnowIsSaid() {
        double[] clipped = Sound.of(44_100, 2, t -> Math.max(-1, Math.min(1, 2 * Math.sin(3000 * t))));
        assertThat(LevelAnalysis.of(Recording.of(RATE, clipped).stream(), LevelSettings.RELATIVE)
                        .warnings())
                .anyMatch(w -> w.contains("clipped"));
        assertThat(LevelAnalysis.of(tone(16_000, 2).stream(), LevelSettings.RELATIVE)
                        .warnings())
                .anyMatch(w -> w.contains("half the sample rate"));
        assertThat(LevelAnalysis.of(tone(44_100, 0.5).stream(), LevelSettings.RELATIVE)
                        .warnings())
                .anyMatch(w -> w.contains("shorter than a second"));
        double[] x = new double[44_100];
        LevelReport three = LevelAnalysis.of(Recording.of(RATE, x, x, x).stream(), LevelSettings.RELATIVE);
        assertThat(three.programme()).isEmpty();
        assertThat(three.warnings()).anyMatch(w -> w.contains("3 channels"));
    }

    @Test
    void ratesThatCannotHoldTheSoundAreRefusedWithARemedy() {
        assertThatThrownBy(() -> LevelAnalysis.of(tone(4000, 1).stream(), LevelSettings.RELATIVE))
                .hasMessageContaining("8000 Hz");
        LevelReport low = LevelAnalysis.of(tone(22_050, 2).stream(), LevelSettings.calibrated(calibration()));
        assertThat(low.channels().get(0).loudness())
                .isInstanceOfSatisfying(
                        NoLoudness.class, no -> assertThat(no.reason()).contains("36000"));
    }

    @Test
    void anEmptyRecordingHasNoLevelsButAReport() {
        LevelReport report = LevelAnalysis.of(Recording.of(RATE, new double[0]).stream(), LevelSettings.RELATIVE);
        assertThat(report.durationSeconds()).isZero();
        assertThat(report.channels().get(0).soundLevels()).isEmpty();
        assertThat(report.programme().orElseThrow().integratedLufs()).isEmpty();
    }
}
