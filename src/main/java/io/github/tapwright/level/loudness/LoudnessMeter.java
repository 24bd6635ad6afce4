package io.github.tapwright.level.loudness;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.Resampler;
import io.github.tapwright.statistics.Median;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Measures the loudness of one calibrated channel block by block, some tens of times faster than it sounds.
 *
 * <p>The method's filters are made for 48 kHz; any other whole rate from 36 kHz is resampled to it, flat within
 * 0.001 dB up to 15 kHz, above the method's highest band. Source: [ISO532-1], for time-varying sounds.
 */
public final class LoudnessMeter {

    private static final double REFERENCE_PASCALS = 20e-6;
    private static final int FRAMES_PER_CHUNK = 64;
    private static final int CHUNK = FRAMES_PER_CHUNK * BandEnvelope.SAMPLES_PER_FRAME;

    /** Below this rate the resampler, or half the rate, would cut into the band of 12.5 kHz. */
    public static final double LOWEST_RATE_HZ = 36_000;

    private final SoundField field;
    private final double pascalsAtFullScale;
    private final Resampler resampler;
    private final List<BandEnvelope> bands = new ArrayList<>();
    private final LoudnessTrace trace;
    private final SharedZeros zeros = new SharedZeros(CHUNK);
    private final double[] chunk = new double[CHUNK];
    private final double[][] intensities = new double[FilterTable.BANDS][FRAMES_PER_CHUNK];
    private int filled;
    private long samples;

    /**
     * A meter at rest.
     *
     * @param rate sample rate, a whole number of hertz from {@link #LOWEST_RATE_HZ}
     * @param fullScaleLevelDb dB SPL of a signal whose mean square is 1 re full scale
     * @param field how the sound reached the microphone
     */
    public LoudnessMeter(SampleRate rate, double fullScaleLevelDb, SoundField field) {
        if (!accepts(rate)) {
            throw new IllegalArgumentException("loudness needs a whole sample rate from 36000 Hz");
        }
        this.field = field;
        this.pascalsAtFullScale = REFERENCE_PASCALS * Math.pow(10, fullScaleLevelDb / 20);
        int divisor = divisor((int) FilterTable.RATE_HZ, (int) rate.hertz());
        this.resampler = new Resampler((int) FilterTable.RATE_HZ / divisor, (int) rate.hertz() / divisor);
        this.trace = new LoudnessTrace(field);
        for (int band = 0; band < FilterTable.BANDS; band++) {
            bands.add(new BandEnvelope(band));
        }
    }

    /**
     * Whether recordings of this rate can be measured.
     *
     * @param rate sample rate
     * @return true for whole rates from {@link #LOWEST_RATE_HZ}
     */
    public static boolean accepts(SampleRate rate) {
        return rate.hertz() >= LOWEST_RATE_HZ && rate.hertz() <= 1e6 && rate.hertz() == Math.rint(rate.hertz());
    }

    /**
     * Takes the next samples.
     *
     * @param block re full scale, left unchanged
     * @param count how many of them count
     */
    public void take(double[] block, int count) {
        collect(resampler.process(block, count));
    }

    /**
     * Ends the sound.
     *
     * @return its loudness, or why there is none
     */
    public LoudnessResult finish() {
        collect(resampler.finish());
        measureChunk();
        trace.finish();
        if (samples == 0) {
            return new NoLoudness("the recording is empty; record the sound again");
        }
        double[] levelsDb = bands.stream()
                .mapToDouble(band -> LoudnessTrace.levelDb(band.energy() / samples))
                .toArray();
        if (!trace.applicable() || !CoreLoudness.applicable(levelsDb)) {
            return new NoLoudness(
                    "a band up to 250 Hz exceeds 120 dB, where loudness is not defined; check the calibration");
        }
        double[] sone = trace.values();
        double n5 = Median.quantile(sone, 0.95);
        return new HeardLoudness(
                Arrays.stream(sone).max().orElse(0),
                n5,
                LoudnessLevel.phon(n5),
                Loudness.ofSteadySound(
                        new ThirdOctaveLevels(Arrays.stream(levelsDb).boxed().toList()), field),
                field);
    }

    private void collect(double[] resampled) {
        for (double sample : resampled) {
            chunk[filled++] = sample * pascalsAtFullScale;
            if (filled == CHUNK) {
                measureChunk();
            }
        }
    }

    private void measureChunk() {
        int frames = (filled + BandEnvelope.SAMPLES_PER_FRAME - 1) / BandEnvelope.SAMPLES_PER_FRAME;
        zeros.process(chunk, filled);
        for (int band = 0; band < intensities.length; band++) {
            bands.get(band).process(chunk, filled, intensities[band]);
        }
        double[] frame = new double[intensities.length];
        for (int f = 0; f < frames; f++) {
            for (int band = 0; band < frame.length; band++) {
                frame[band] = intensities[band][f];
            }
            trace.take(frame);
        }
        samples += filled;
        filled = 0;
    }

    private static int divisor(int a, int b) {
        return b == 0 ? a : divisor(b, a % b);
    }
}
