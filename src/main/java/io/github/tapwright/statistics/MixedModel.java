package io.github.tapwright.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A difference seen through values that belong together in groups: several sittings of each instrument, instruments of two kinds.
 *
 * <p>y = Xβ + b_group + e, b and e normal. The variances come from restricted maximum likelihood ([Harville1977],
 * profiled as in [Bates2015]); β from generalised least squares with them. Degrees of freedom: Satterthwaite's ([Giesbrecht1985],
 * [Kuznetsova2017]), but never more than the design has by itself ([PinheiroBates2000] 2.4.2): a predictor that is constant within
 * each group has groups − predictors of that kind − 1, one that varies within them has observations − groups − predictors of that
 * kind. In a balanced study these are those of the analysis of variance; where the variance
 * between groups comes out as zero they keep the interval from growing too narrow.
 *
 * <p>To treat twenty sittings of four instruments as twenty independent values would make two constructions seem to differ that
 * do not. This is what the model is for.
 */
public final class MixedModel {

    private MixedModel() {}

    /**
     * Groups differ in level.
     *
     * @param observations with the same number of predictors each
     * @return the fit
     */
    public static MixedFit randomIntercept(List<Observation> observations) {
        Map<String, List<Observation>> groups = new LinkedHashMap<>();
        observations.forEach(o ->
                groups.computeIfAbsent(o.group(), name -> new ArrayList<>()).add(o));
        return randomInterceptOf(groups.values().stream().map(ObservedGroup::of).toList());
    }

    /**
     * The same of groups that stand in columns.
     *
     * @param groups with the same number of predictors each
     * @return the fit
     */
    public static MixedFit randomInterceptOf(List<ObservedGroup> groups) {
        MixedData data = new MixedData(groups);
        if (data.groups() < 2 || !data.scattersWithinGroups) {
            throw new IllegalArgumentException(
                    "at least two groups are needed, and one of them with values that differ: measure again after setting up anew");
        }
        for (int i = 0; i < data.coefficients; i++) {
            DesignFreedom.of(data, i);
        }
        return MixedReport.of(data, RemlSearch.of(data));
    }
}
