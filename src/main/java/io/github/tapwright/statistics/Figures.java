package io.github.tapwright.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as people read them. */
public final class Figures {

    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    private Figures() {}

    /**
     * Value ± standard uncertainty: the uncertainty to two significant digits, the value to the same place or,
     * where that lies above the ones, to the ones. Source: [GUM], 7.2.6.
     *
     * @param estimate value and standard uncertainty
     * @return such as "101.43 ± 0.12"
     */
    public static String text(Estimate estimate) {
        if (estimate.standardUncertainty() == 0) {
            return String.format(Locale.ROOT, "%.4g ± 0", estimate.value());
        }
        BigDecimal u = new BigDecimal(estimate.standardUncertainty()).round(TWO_DIGITS);
        // An uncertainty such as 0.5 is exact with one digit; it gets its nought.
        int places = Math.max(0, u.scale() + TWO_DIGITS.getPrecision() - u.precision());
        BigDecimal value = new BigDecimal(estimate.value()).setScale(places, RoundingMode.HALF_EVEN);
        return minus(value.toPlainString()) + " ± "
                + u.setScale(places, RoundingMode.HALF_UP).toPlainString();
    }

    /**
     * As {@link #text(Estimate)} but no finer than so many places, the uncertainty rounded up as [GUM] allows.
     *
     * @param estimate value and standard uncertainty
     * @param finest most decimal places
     * @return such as "101.4 ± 0.2"
     */
    public static String text(Estimate estimate, int finest) {
        BigDecimal u = new BigDecimal(estimate.standardUncertainty());
        BigDecimal coarse = u.setScale(finest, RoundingMode.UP);
        return u.signum() == 0 || u.round(TWO_DIGITS).scale() <= finest
                ? text(estimate)
                : text(estimate.value(), finest) + " ± " + coarse.toPlainString();
    }

    /**
     * How many of something, in its singular or plural.
     *
     * @param number how many
     * @param one what one is called; takes an s for any other number
     * @return such as "1 sitting", "3 sittings"
     */
    public static String count(long number, String one) {
        return number + " " + one + (number == 1 ? "" : "s");
    }

    /**
     * A figure with a fixed number of places and a true minus sign; never "−0".
     *
     * @param figure finite
     * @param places decimal places
     * @return the figure
     */
    public static String text(double figure, int places) {
        BigDecimal rounded = new BigDecimal(figure).setScale(places, RoundingMode.HALF_EVEN);
        return minus(rounded.toPlainString());
    }

    /**
     * A figure as short as it is exact: "650", "2.4".
     *
     * @param figure finite
     * @return the figure
     */
    public static String plain(double figure) {
        return minus(BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString());
    }

    /**
     * A difference with half its 95 % interval, to the place of the second digit of that half.
     *
     * @param difference with its uncertainty
     * @return such as "+3.1 ± 1.2"
     */
    public static String difference(Estimate difference) {
        return difference(difference.value(), difference.halfWidth95());
    }

    /**
     * A difference with half the width of an interval, to the place of the second digit of that half.
     *
     * @param difference finite
     * @param halfWidth not negative
     * @return such as "+3.1 ± 1.2"
     */
    public static String difference(double difference, double halfWidth) {
        return signed(difference, text(Estimate.of(difference, halfWidth)));
    }

    /**
     * How great a difference is, to the place its interval is known to.
     *
     * @param difference finite
     * @param halfWidth half the width of its interval, not negative
     * @return such as "3.1", without a sign
     */
    public static String size(double difference, double halfWidth) {
        String text = text(Estimate.of(Math.abs(difference), halfWidth));
        return text.substring(0, text.indexOf(" ± "));
    }

    /**
     * A difference with a fixed number of places; one that rounds to zero has no sign.
     *
     * @param difference finite
     * @param places decimal places
     * @return such as "+2.05"
     */
    public static String difference(double difference, int places) {
        return signed(difference, text(difference, places));
    }

    private static String signed(double difference, String text) {
        boolean zero = text.split(" ", 2)[0].chars().noneMatch(c -> c >= '1' && c <= '9');
        return difference > 0 && !zero ? "+" + text : text;
    }

    /**
     * Two ends of an interval, to the place of the second digit of half its width.
     *
     * @param interval its ends
     * @return such as "1.9 to 4.3"
     */
    public static String interval(Interval interval) {
        BigDecimal width = new BigDecimal(interval.width() / 2).round(TWO_DIGITS);
        int places = interval.width() == 0 ? 2 : Math.max(0, width.scale());
        return text(interval.lower(), places) + " to " + text(interval.upper(), places);
    }

    /**
     * A probability as a table shows it.
     *
     * @param p 0 to 1
     * @return such as "0.04" or "&lt; 0.001"
     */
    public static String probability(double p) {
        return p < 0.001 ? "< 0.001" : String.format(Locale.ROOT, p < 0.0995 ? "%.2g" : "%.2f", p);
    }

    /**
     * A probability as a sentence says it, after the letter p.
     *
     * @param p 0 to 1
     * @return such as "= 0.04" or "&lt; 0.001"
     */
    public static String probabilityAfterP(double p) {
        return (p < 0.001 ? "" : "= ") + probability(p);
    }

    private static String minus(String digits) {
        return digits.replace('-', '−');
    }
}
