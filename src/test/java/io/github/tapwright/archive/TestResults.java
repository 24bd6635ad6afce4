package io.github.tapwright.archive;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.tap.Rejection;
import io.github.tapwright.tap.RejectionReason;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

/** Invented results with something in every field. */
final class TestResults {

    private TestResults() {}

    /** Two resonances near the given frequencies, the lower one named by the rules. */
    static TapResult of(double lowHz, double highHz, String methodVersion) {
        Random random = new Random(7);
        List<Strike> strikes = List.of(
                new Strike(0, 0.1 + 0.2, -6.02, 41.5, List.of()),
                new Strike(
                        1,
                        1.5,
                        -0.001,
                        7.25,
                        List.of(
                                new Rejection(RejectionReason.CLIPPED, "12 samples at full scale"),
                                new Rejection(RejectionReason.TOO_QUIET, "7.3 dB, less than 12 dB"))));
        List<ResponseCurve.Point> points = IntStream.range(0, 400)
                .mapToObj(i -> new ResponseCurve.Point(
                        60 + 0.5 * i, -random.nextDouble(), -40 * random.nextDouble(), random.nextDouble()))
                .toList();
        return new TapResult(
                strikes,
                Optional.of(new ResponseCurve(points, 1.25, 1)),
                List.of(
                        resonance(lowHz, Optional.of(ModeName.MAIN_AIR), 4.5),
                        resonance(highHz, Optional.empty(), Double.POSITIVE_INFINITY)),
                List.of("one strike only", "no spread is known"),
                new TapSettings(70, 900, 0.7, 11.5).withSetAside(List.of(new SetAside(0, 1.25), new SetAside(1, 0.5))),
                methodVersion);
    }

    private static NamedResonance resonance(double frequencyHz, Optional<ModeName> name, double degreesOfFreedom) {
        Resonance resonance = new Resonance(
                new Estimate(frequencyHz, 0.11, degreesOfFreedom),
                new Estimate(31.7, 1.0 / 3, degreesOfFreedom),
                new Estimate(0.613, 0.007, degreesOfFreedom),
                new Estimate(-3.25, 0.5, degreesOfFreedom),
                1,
                "a note");
        return new NamedResonance(resonance, name, "a reason");
    }
}
