package io.github.tapwright.statistics;

/**
 * The degrees of freedom a study's design has by itself, whatever came out of it.
 *
 * <p>Constant within each group: groups − coefficients of that kind. Varying within them: observations − groups − coefficients of that
 * kind. Source: [PinheiroBates2000], 2.4.2.
 */
final class DesignFreedom {

    private DesignFreedom() {}

    static double of(MixedData data, int coefficient) {
        int between = 0;
        for (int j = 0; j < data.coefficients; j++) {
            between += data.constantWithinGroups(j) ? 1 : 0;
        }
        int within = data.coefficients - between;
        double freedom = data.constantWithinGroups(coefficient)
                ? data.groups() - between
                : data.observations - data.groups() - within;
        if (freedom < 1) {
            throw new IllegalArgumentException(
                    "too few " + (data.constantWithinGroups(coefficient) ? "groups" : "repeats within groups")
                            + " for so many predictors: measure more, or ask for fewer");
        }
        return freedom;
    }
}
