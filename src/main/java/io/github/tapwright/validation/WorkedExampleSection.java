package io.github.tapwright.validation;

import io.github.tapwright.statistics.EffectSize;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.MannKendall;
import io.github.tapwright.statistics.PermutationResult;
import io.github.tapwright.statistics.PermutationTest;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.StudentQuantile;
import io.github.tapwright.statistics.Summary;
import io.github.tapwright.statistics.WelchDifference;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;

/** Worked examples of the tests that comparisons and trends rest on. */
final class WorkedExampleSection implements Section {

    private static final double[] MAIZE = {49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48};
    private static final double[] TREATMENT = {85, 88, 75, 66, 25, 29, 83, 39, 97};
    private static final double[] CONTROL = {68, 41, 10, 49, 16, 65, 32, 92, 28, 98};
    private static final double[] GAUGE = {30.02, 29.99, 30.11, 29.97, 30.01, 29.99};
    private static final double[] OTHER_GAUGE = {29.89, 29.93, 29.72, 29.98, 30.02, 29.98};
    private static final double[] FIRST = {
        27.5, 21.0, 19.0, 23.6, 17.0, 17.9, 16.9, 20.1, 21.9, 22.6, 23.1, 19.6, 19.0, 21.7, 21.4
    };
    private static final double[] SECOND = {
        27.1, 22.0, 20.8, 23.4, 23.4, 23.5, 25.8, 22.0, 24.8, 20.2, 21.9, 22.1, 22.9, 20.5, 24.4
    };

    /** Degrees of freedom, and the 97.5 % quantile as printed. */
    private static final double[][] STUDENT = {
        {1, 12.71}, {2, 4.30}, {3, 3.18}, {5, 2.57}, {10, 2.23}, {20, 2.09}, {50, 2.01}
    };

    @Override
    public String title() {
        return "Statistics: worked examples";
    }

    @Override
    public String about() {
        return "Permutation counts, Welch's difference, Student's quantiles, trends by ranks and effect sizes as others worked them.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        permutations(checks);
        welch(checks);
        for (double[] row : STUDENT) {
            add(
                    checks,
                    "Student's t, 97.5 %, " + Numbers.expected(row[0]) + " degrees of freedom",
                    row[1],
                    "[GUM], table G.2",
                    Tolerance.within(0.0051, "half a unit of the last digit printed"),
                    () -> StudentQuantile.of(0.975, row[0]));
        }
        trends(checks);
        add(
                checks,
                "Hedges' g of the book's example",
                0.5924,
                "[Borenstein2009], chapter 4, from memory, to be verified",
                Tolerance.within(0.0002, "the book rounds every step to four decimals"),
                () -> EffectSize.of(new Summary(50, 100, 4.5), new Summary(50, 103, 5.5))
                        .orElseThrow()
                        .value());
        return checks;
    }

    private static void permutations(List<Check> checks) {
        PermutationResult maize = PermutationTest.USUAL.ofPairs(MAIZE);
        String fisher = "[Fisher1935], data [Darwin1876]";
        count(checks, "maize in pairs, arrangements", 32_768, fisher, maize::counted);
        count(checks, "maize in pairs, as far up", 863, fisher, maize::asFarUp);
        PermutationResult nine = PermutationTest.USUAL.ofMeans(CONTROL, TREATMENT);
        count(checks, "nine against ten, arrangements", 92_378, "[RosettaCode]", nine::counted);
        count(checks, "nine against ten, as far up", 12_140, "[RosettaCode]", nine::asFarUp);
        count(checks, "nine against ten, as far down", 80_551, "[RosettaCode]", nine::asFarDown);
        count(
                checks,
                "gauges, as far apart",
                58,
                "data [RosettaCode], derived in exact decimals by another program",
                () -> PermutationTest.USUAL.ofMeans(GAUGE, OTHER_GAUGE).asFarApart());
    }

    private static void welch(List<Check> checks) {
        Estimate fifteen = WelchDifference.of(FIRST, SECOND);
        Estimate six = WelchDifference.of(OTHER_GAUGE, GAUGE);
        Tolerance printed = Tolerance.within(1e-6, "the digits printed");
        String source = "[RosettaCode]";
        add(
                checks,
                "Welch, fifteen against fifteen, degrees of freedom",
                24.988529,
                source,
                printed,
                fifteen::degreesOfFreedom);
        add(
                checks,
                "Welch, fifteen against fifteen, probability",
                0.021378001,
                source,
                Tolerance.within(1e-8, "the digits printed"),
                () -> StudentProbability.twoSided(fifteen));
        add(checks, "Welch, gauges, degrees of freedom", 7.030560, source, printed, six::degreesOfFreedom);
        add(
                checks,
                "Welch, gauges, lower end of 95 %",
                -0.019569,
                source,
                printed,
                () -> six.interval95().lower());
        add(
                checks,
                "Welch, gauges, upper end of 95 %",
                0.209569,
                source,
                printed,
                () -> six.interval95().upper());
    }

    private static void trends(List<Check> checks) {
        double[] hundred = IntStream.rangeClosed(1, 100).asDoubleStream().toArray();
        count(
                checks,
                "a hundred rising values, score",
                4950,
                "[MannKendall.jl]",
                () -> MannKendall.of(hundred).score());
        count(
                checks,
                "a hundred rising values, variance",
                112_750,
                "[MannKendall.jl]",
                () -> MannKendall.of(hundred).variance());
        double[] times = {1, 2, 3, 4, 10, 12, 18};
        double[] values = {9, 15, 19, 20, 45, 55, 78};
        count(
                checks,
                "seven rising values, score",
                21,
                "[Sen1968]",
                () -> MannKendall.of(times, values).score());
        add(
                checks,
                "seven rising values, probability",
                2 / 5040.0,
                "derived: one order of 7!, either way",
                Tolerance.within(1e-15, "rounding of the computer"),
                () -> MannKendall.of(times, values).probability());
    }

    private static void count(
            List<Check> checks, String quantity, double expected, String source, DoubleSupplier computation) {
        add(checks, quantity, expected, source, Tolerance.within(0, "a whole number, counted"), computation);
    }

    private static void add(
            List<Check> checks,
            String quantity,
            double expected,
            String source,
            Tolerance tolerance,
            DoubleSupplier computation) {
        checks.add(new Check(quantity, expected, "", source, tolerance, computation));
    }
}
