package io.github.tapwright;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.tap.Rejection;
import io.github.tapwright.tap.RejectionReason;
import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.ResponseCurve.Point;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Results made up for tests of the faces: what they show is invented, that they show it is tested. */
public final class InventedResults {

    private InventedResults() {}

    /** Two used strikes and a rejected one; three resonances, two of them named. */
    public static TapResult threeResonances() {
        return result(1.0);
    }

    /** The same body with every resonance moved by a factor. */
    public static TapResult result(double shift) {
        return result(shift, -3.2, 0, -7.4);
    }

    /** The same body with other levels of main air, main top and the one without a name. */
    public static TapResult levels(double airDb, double topDb, double otherDb) {
        return result(1, airDb, topDb, otherDb);
    }

    private static TapResult result(double shift, double airDb, double topDb, double otherDb) {
        List<NamedResonance> resonances = List.of(
                resonance(98.42 * shift, 0.061, 24.3, 0.7, airDb, Optional.of(ModeName.MAIN_AIR)),
                resonance(187.13 * shift, 0.113, 30.7, 0.9, topDb, Optional.of(ModeName.MAIN_TOP)),
                resonance(231.6 * shift, 0.42, 38.1, 2.2, otherDb, Optional.empty()));
        return new TapResult(
                strikes(),
                Optional.of(curve(resonances)),
                resonances,
                List.of("only 2 strikes could be used; 5 or more make the uncertainties firmer"),
                TapSettings.STANDARD,
                "invented-1");
    }

    /** The same body of which nothing but the main top was found. */
    public static TapResult mainTopAlone(double shift) {
        TapResult all = result(shift);
        return new TapResult(
                all.strikes(),
                all.curve(),
                all.resonances().subList(1, 2),
                all.warnings(),
                all.settings(),
                all.methodVersion());
    }

    /** A recording in which nothing was found. */
    public static TapResult nothing() {
        return new TapResult(List.of(), Optional.empty(), List.of(), List.of(), TapSettings.STANDARD, "invented-1");
    }

    private static List<Strike> strikes() {
        return List.of(
                new Strike(0, 0.512, -6.3, 41.2, List.of()),
                new Strike(0, 2.034, -5.1, 42.9, List.of()),
                new Strike(
                        0,
                        3.871,
                        -0.01,
                        44.0,
                        List.of(
                                new Rejection(RejectionReason.CLIPPED, "7 samples at full scale"),
                                new Rejection(RejectionReason.DOUBLE_STRIKE, "second contact 43 ms later"))));
    }

    private static NamedResonance resonance(
            double hz, double u, double q, double uQ, double levelDb, Optional<ModeName> name) {
        double decayTimeSeconds = Math.log(1000) * q / (Math.PI * hz);
        Resonance numbers = new Resonance(
                new Estimate(hz, u, 4),
                new Estimate(q, uQ, 4),
                new Estimate(decayTimeSeconds, decayTimeSeconds * uQ / q, 4),
                new Estimate(levelDb, 0.3, 4),
                2,
                "");
        return new NamedResonance(numbers, name, name.isPresent() ? "invented for a test" : "two candidates");
    }

    private static ResponseCurve curve(List<NamedResonance> resonances) {
        List<Double> levels = IntStream.rangeClosed(60, 1000)
                .mapToObj(hz -> levelDb(hz, resonances))
                .toList();
        double highest = levels.stream().mapToDouble(x -> x).max().orElseThrow();
        List<Point> points = IntStream.range(0, levels.size())
                .mapToObj(i -> point(60 + i, levels.get(i) - highest))
                .toList();
        return new ResponseCurve(points, 1.4, 2);
    }

    private static Point point(double hz, double levelDb) {
        double half = 0.4 + 1.2 * Math.pow(Math.sin(hz / 60), 2);
        return new Point(hz, levelDb, levelDb - half, levelDb + half);
    }

    private static double levelDb(double hz, List<NamedResonance> resonances) {
        double re = 0.02;
        double im = 0;
        for (NamedResonance named : resonances) {
            Resonance r = named.resonance();
            double ratio = hz / r.frequencyHz().value();
            double a = 1 - ratio * ratio;
            double b = ratio / r.q().value();
            double strength = Math.pow(10, r.levelDb().value() / 20) / r.q().value();
            re += strength * a / (a * a + b * b);
            im -= strength * b / (a * a + b * b);
        }
        return 20 * Math.log10(Math.hypot(re, im));
    }
}
