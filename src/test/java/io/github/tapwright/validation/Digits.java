package io.github.tapwright.validation;

/** How many digits two numbers share: −log₁₀ of the relative error, 15 if they are equal. */
public final class Digits {

    private Digits() {}

    /** Digits of a computed number that agree with the certified one. */
    public static double shared(double computed, double certified) {
        double error = Math.abs(computed - certified) / Math.abs(certified);
        return error == 0 ? 15 : Math.min(15, -Math.log10(error));
    }
}
