package io.github.tapwright.synthesis;

import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A scene to be recorded: modes, strikes, a room, faults; the same seed gives the same samples.
 *
 * <p>Unless told otherwise: 48 kHz, 7 strikes 1.3 s apart from 0.8 s on, contact of 1.5 ms, strengths scattered
 * by 3 dB, strike place moving each mode's amplitude by 5 %, the loudest good strike at −6 dB re full scale,
 * white noise 40 dB below in the body band, nothing wrong.
 */
public final class TapScene {

    final List<TrueMode> modes;
    long seed = 1;
    double rateHz = 48_000;
    int strikeCount = 7;
    double firstSeconds = 0.8;
    double spacingSeconds = 1.3;
    double contactSeconds = 0.0015;
    double strengthSpreadDb = 3;
    double placeSpread = 0.05;
    double peakDbfs = -6;
    double directGain;
    NoiseLevel noiseLevel = NoiseLevel.BODY_BAND;
    double snrDb = 40;
    boolean pinkish;
    double mainsHz = 50;
    double humDbfs = Double.NEGATIVE_INFINITY;
    double speechDbfs = Double.NEGATIVE_INFINITY;
    final Map<Integer, PlantedFault> faults = new HashMap<>();
    final Map<Integer, Double> secondContactSeconds = new HashMap<>();

    private TapScene(List<TrueMode> modes) {
        this.modes = List.copyOf(modes);
    }

    /** A scene with these modes and everything else as usual. */
    public static TapScene of(List<TrueMode> modes) {
        return new TapScene(modes);
    }

    /** A scene with these modes and everything else as usual. */
    public static TapScene of(TrueMode... modes) {
        return new TapScene(List.of(modes));
    }

    /** Chooses all chance in the scene. */
    public TapScene seed(long value) {
        seed = value;
        return this;
    }

    /** Sample rate, Hz. */
    public TapScene rate(double hertz) {
        rateHz = hertz;
        return this;
    }

    /** How many strikes, and how far apart on average, s. */
    public TapScene strikes(int count, double everySeconds) {
        strikeCount = count;
        spacingSeconds = everySeconds;
        return this;
    }

    /** When the first strike comes, s. */
    public TapScene firstAt(double seconds) {
        firstSeconds = seconds;
        return this;
    }

    /** Duration of each contact, s. */
    public TapScene contact(double seconds) {
        contactSeconds = seconds;
        return this;
    }

    /** Standard deviation of the strengths, dB, and of each mode's relative amplitude. */
    public TapScene scatter(double strengthDb, double place) {
        strengthSpreadDb = strengthDb;
        placeSpread = place;
        return this;
    }

    /** Peak of the loudest good strike, dB re full scale. */
    public TapScene peak(double dbfs) {
        peakDbfs = dbfs;
        return this;
    }

    /** What follows the force itself at once; see {@link Ringing}. */
    public TapScene direct(double gain) {
        directGain = gain;
        return this;
    }

    /** White noise at a signal-to-noise ratio; positive infinity for none. */
    public TapScene whiteNoise(NoiseLevel meaning, double ratioDb) {
        noiseLevel = meaning;
        snrDb = ratioDb;
        pinkish = false;
        return this;
    }

    /** Pink-ish noise at a signal-to-noise ratio. */
    public TapScene pinkishNoise(NoiseLevel meaning, double ratioDb) {
        noiseLevel = meaning;
        snrDb = ratioDb;
        pinkish = true;
        return this;
    }

    /** No noise, hum or talk at all. */
    public TapScene silent() {
        humDbfs = Double.NEGATIVE_INFINITY;
        speechDbfs = Double.NEGATIVE_INFINITY;
        return whiteNoise(NoiseLevel.FULL_BAND, Double.POSITIVE_INFINITY);
    }

    /** Mains hum: fundamental and its peak level, dB re full scale. */
    public TapScene hum(double hertz, double dbfs) {
        mainsHz = hertz;
        humDbfs = dbfs;
        return this;
    }

    /** Talk in the room: its peak level, dB re full scale. */
    public TapScene speech(double dbfs) {
        speechDbfs = dbfs;
        return this;
    }

    /** Plants a fault at a strike counted from 0. */
    public TapScene fault(int strike, PlantedFault fault) {
        if (fault == PlantedFault.RECORDING_ENDS && strike != strikeCount - 1) {
            throw new IllegalArgumentException("a recording can only end at its last strike");
        }
        if (fault == PlantedFault.NEXT_TOO_EARLY && strike == strikeCount - 1) {
            throw new IllegalArgumentException("after the last strike nothing can come too early");
        }
        faults.put(strike, fault);
        return this;
    }

    /** Plants a double strike whose second contact comes after a given time. */
    public TapScene doubleStrike(int strike, double afterSeconds) {
        secondContactSeconds.put(strike, afterSeconds);
        return fault(strike, PlantedFault.DOUBLE_STRIKE);
    }

    /** The recording and its truth. */
    public SyntheticTaps build() {
        return new TapSceneBuild(this).build();
    }

    Recording recording(double[] samples) {
        return Recording.of(new SampleRate(rateHz), samples);
    }
}
