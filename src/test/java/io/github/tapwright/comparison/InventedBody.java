package io.github.tapwright.comparison;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.TapSettings;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A body made up for tests, and its sittings: main air 98 Hz, main top 187 Hz, main back 230 Hz, each times a factor. */
public record InventedBody(double air, double top, double back, double q) {

    public static final InventedBody USUAL = new InventedBody(1, 1, 1, 1);

    public static Conditions conditions(Stage stage, double percent) {
        return new Conditions(
                Optional.of(stage),
                new Air(Optional.of(20.0), Optional.of(percent)),
                new Strings(
                        Optional.of(StageClass.of(stage) == StageClass.UNSTRUNG ? StringState.OFF : StringState.DAMPED),
                        Optional.empty(),
                        Optional.empty()),
                HoleState.OPEN,
                Conditions.UNKNOWN.placing(),
                Conditions.UNKNOWN.microphone(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public Sitting sitting(long id, String instrument, Instant at, Conditions conditions) {
        return of(id, instrument, at, conditions, new Findings.OfTaps(result()));
    }

    public static Sitting of(long id, String instrument, Instant at, Conditions conditions, Findings findings) {
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48000, 1, 0, 5, List.of());
        return new Sitting(
                new SittingId(id),
                new ShopNumber(instrument),
                Moment.at(at),
                at,
                conditions,
                List.of(new KeptRecording(new Original(String.format("%064x", id), 1000, "wav"), "taps.wav", facts)),
                List.of(new Analysis(1, at, findings)),
                List.of(),
                Optional.empty());
    }

    private TapResult result() {
        return new TapResult(
                List.of(),
                Optional.of(curve()),
                List.of(
                        resonance(98 * air, 24 * q, ModeName.MAIN_AIR),
                        resonance(187 * top, 30 * q, ModeName.MAIN_TOP),
                        resonance(230 * back, 38 * q, ModeName.MAIN_BACK)),
                List.of(),
                TapSettings.STANDARD,
                "invented-1");
    }

    /** A hump about the main top; coarse, because what is tested needs no more. */
    private ResponseCurve curve() {
        List<ResponseCurve.Point> points = new ArrayList<>();
        for (double hz = 60; hz <= 1000; hz += 5) {
            double level = -30 * Math.abs(Math.log(hz / (187 * top)));
            points.add(new ResponseCurve.Point(hz, level, level, level));
        }
        return new ResponseCurve(points, 1.4, 6);
    }

    private static NamedResonance resonance(double hz, double q, ModeName name) {
        double decayTimeSeconds = Math.log(1000) * q / (Math.PI * hz);
        Resonance numbers = new Resonance(
                new Estimate(hz, hz * 2e-4, 5),
                new Estimate(q, q * 0.01, 5),
                new Estimate(decayTimeSeconds, decayTimeSeconds * 0.01, 5),
                new Estimate(0, 0.2, 5),
                6,
                "");
        return new NamedResonance(numbers, Optional.of(name), "invented for a test");
    }
}
