package io.github.tapwright.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as the book prints them: as many digits as the tolerance lets mean anything. */
final class Numbers {

    private static final int MOST_DIGITS = 15;

    private Numbers() {}

    /** Two digits, such as 0.1, 5.1E-6. */
    static String bound(double value) {
        return Double.isInfinite(value)
                ? "any"
                : plain(BigDecimal.valueOf(value).round(new MathContext(2)));
    }

    static String expected(double value) {
        return plain(BigDecimal.valueOf(value).round(new MathContext(MOST_DIGITS)));
    }

    /** One digit beyond the first that the tolerance allows to be wrong. */
    static String got(double value, Tolerance tolerance) {
        double least = Math.min(tolerance.below(), tolerance.above());
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        if (tolerance.below() == 0 && tolerance.above() == 0) {
            return expected(value);
        }
        if (least == 0 || !Double.isFinite(least)) {
            return plain(BigDecimal.valueOf(value).round(new MathContext(4)));
        }
        int decimals = Math.max(0, 1 - (int) Math.floor(Math.log10(least)));
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.precision() > MOST_DIGITS
                ? rounded.round(new MathContext(MOST_DIGITS)).toString()
                : rounded.toPlainString();
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        int exponent = stripped.precision() - stripped.scale() - 1;
        return exponent < -5 || exponent > 9 ? stripped.toString() : stripped.toPlainString();
    }
}
