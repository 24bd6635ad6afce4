package io.github.tapwright.cli;

import io.github.tapwright.statistics.Estimate;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as people read them. */
final class Figures {

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    private Figures() {}

    /**
     * Value ± standard uncertainty: the uncertainty to two significant digits, the value to the same place.
     * Source: [GUM], 7.2.6.
     */
    static String text(Estimate estimate) {
        if (estimate.standardUncertainty() == 0) {
            return String.format(Locale.ROOT, "%.4g ± 0", estimate.value());
        }
        BigDecimal u = new BigDecimal(estimate.standardUncertainty()).round(TWO_DIGITS);
        int places = Math.max(0, u.scale());
        BigDecimal value = new BigDecimal(estimate.value()).setScale(places, RoundingMode.HALF_EVEN);
        return minus(value.toPlainString()) + " ± "
                + u.setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /** As {@link #text(Estimate)} but no finer than so many places, the uncertainty rounded up as [GUM] allows. */
    static String text(Estimate estimate, int finest) {
        BigDecimal u = new BigDecimal(estimate.standardUncertainty());
        BigDecimal coarse = u.setScale(finest, RoundingMode.UP);
        return u.signum() == 0 || u.round(TWO_DIGITS).scale() <= finest
                ? text(estimate)
                : text(estimate.value(), finest) + " ± " + coarse.toPlainString();
    }

    /** A figure with a fixed number of places and a true minus sign; never "−0". */
    static String text(double figure, int places) {
        BigDecimal rounded = new BigDecimal(figure).setScale(places, RoundingMode.HALF_EVEN);
        return minus(rounded.toPlainString());
    }

    /** A figure as short as it is exact: "650", "2.4". */
    static String plain(double figure) {
        return minus(BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString());
    }

    private static String minus(String digits) {
        return digits.replace('-', '−');
    }
}
