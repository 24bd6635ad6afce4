package io.github.tapwright.level;

import java.util.Arrays;

/**
 * The sine of a known frequency that fits a piece of a signal best, and what is left over.
 *
 * <p>Least squares of a·cos(ωn) + b·sin(ωn) + c; the constant is taken out by centring all three.
 *
 * @param power mean square of the sine, (a² + b²)/2
 * @param restPower mean square of what the sine and the constant leave over
 */
record SineFit(double power, double restPower) {

    static SineFit of(double[] samples, int first, int length, double radiansPerSample) {
        double[] x = centred(Arrays.copyOfRange(samples, first, first + length));
        double[] c = new double[length];
        double[] s = new double[length];
        Arrays.setAll(c, n -> Math.cos(radiansPerSample * n));
        Arrays.setAll(s, n -> Math.sin(radiansPerSample * n));
        centred(c);
        centred(s);
        double determinant = product(c, c) * product(s, s) - product(c, s) * product(c, s);
        double a = (product(x, c) * product(s, s) - product(x, s) * product(c, s)) / determinant;
        double b = (product(x, s) * product(c, c) - product(x, c) * product(c, s)) / determinant;
        for (int n = 0; n < length; n++) {
            x[n] -= a * c[n] + b * s[n];
        }
        return new SineFit((a * a + b * b) / 2, product(x, x) / length);
    }

    /** Takes the mean out of the values where they lie. */
    private static double[] centred(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        for (int n = 0; n < values.length; n++) {
            values[n] -= mean;
        }
        return values;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += a[n] * b[n];
        }
        return sum;
    }
}
