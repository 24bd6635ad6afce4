package io.github.tapwright.validation;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.LinearFit;
import io.github.tapwright.statistics.MixedFit;
import io.github.tapwright.statistics.MixedModel;
import io.github.tapwright.statistics.Observation;
import io.github.tapwright.statistics.OneWayAnova;
import io.github.tapwright.statistics.Summary;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** Reference data sets with certified or printed answers. */
final class ReferenceDataSection implements Section {

    @Override
    public String title() {
        return "Statistics: reference data";
    }

    @Override
    public String about() {
        return "Certified answers of the statistical reference data sets, and printed fits of mixed models.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        summary(checks, "numacc1", 9);
        summary(checks, "numacc4", 8);
        summary(checks, "michelso", 9);
        summary(checks, "lottery", 9);
        anova(checks, "sirstv");
        anova(checks, "smls01");
        DataFile norris = data("norris");
        fit(checks, "norris", 2, () -> LinearFit.line(norris.column("x"), norris.column("y")));
        DataFile pontius = data("pontius");
        fit(checks, "pontius", 3, () -> LinearFit.polynomial(pontius.column("x"), pontius.column("y"), 2));
        fit(checks, "longley", 7, ReferenceDataSection::longley);
        mixed(checks, "rail", "intercept", fit -> fit.fixedEffects().get(0).value());
        mixed(checks, "rail", "group_sd", MixedFit::groupStandardDeviation);
        mixed(checks, "rail", "residual_sd", MixedFit::residualStandardDeviation);
        mixed(checks, "dyestuff", "group_variance", fit -> square(fit.groupStandardDeviation()));
        mixed(checks, "dyestuff", "residual_variance", fit -> square(fit.residualStandardDeviation()));
        mixed(checks, "dyestuff", "criterion", MixedFit::remlCriterion);
        return checks;
    }

    private static DataFile data(String dataset) {
        return DataFile.read("nist-strd/" + dataset + ".csv");
    }

    private static void summary(List<Check> checks, String dataset, int digits) {
        double[] values = data(dataset).column("y");
        certified(checks, dataset, "mean", 9, () -> Summary.of(values).mean());
        certified(checks, dataset, "sd", digits, () -> Summary.of(values).standardDeviation());
        certified(
                checks,
                dataset,
                "lag1",
                digits,
                () -> Summary.lag1Autocorrelation(values).orElseThrow());
    }

    private static void anova(List<Check> checks, String dataset) {
        Supplier<OneWayAnova> anova = () -> OneWayAnova.of(data(dataset).groups());
        certified(checks, dataset, "f", 9, () -> anova.get().f().orElseThrow());
        certified(checks, dataset, "r_squared", 9, () -> anova.get().rSquared().orElseThrow());
        certified(checks, dataset, "residual_sd", 9, () -> anova.get().residualStandardDeviation());
    }

    private static void fit(List<Check> checks, String dataset, int coefficients, Supplier<LinearFit> fit) {
        for (int i = 0; i < coefficients; i++) {
            int index = i;
            Supplier<Estimate> b = () -> fit.get().coefficients().get(index);
            certified(checks, dataset, "b" + i, 9, () -> b.get().value());
            certified(checks, dataset, "se" + i, 9, () -> b.get().standardUncertainty());
        }
    }

    private static LinearFit longley() {
        DataFile data = data("longley");
        double[][] columns = new double[6][];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = data.column("x" + (i + 1));
        }
        return LinearFit.of(data.column("y"), columns);
    }

    private static void certified(
            List<Check> checks, String dataset, String quantity, int digits, DoubleSupplier computation) {
        PublishedRow row = PublishedTable.row("nist-strd/certified.csv", "dataset", dataset, "quantity", quantity);
        checks.add(new Check(
                dataset + ", " + quantity.replace('_', ' '),
                row.number("value"),
                "",
                row.text("source"),
                Tolerance.share(
                        Math.pow(10, -digits),
                        row.number("value"),
                        digits < 9
                                ? digits + " digits: its numbers have no exact binary form"
                                : digits + " digits of those certified"),
                computation));
    }

    private static void mixed(List<Check> checks, String dataset, String quantity, ToDoubleFunction<MixedFit> figure) {
        PublishedRow row = PublishedTable.row("mixed-model/published.csv", "dataset", dataset, "quantity", quantity);
        checks.add(new Check(
                dataset + ", " + quantity.replace('_', ' '),
                row.number("value"),
                "",
                row.text("source"),
                Tolerance.within(0.51 * Math.pow(10, -row.whole("decimals")), "half a unit of the last digit printed"),
                () -> figure.applyAsDouble(MixedModel.randomIntercept(study(dataset)))));
    }

    private static List<Observation> study(String dataset) {
        DataFile data = DataFile.read("mixed-model/" + dataset + ".csv");
        List<String> groups = data.words("group");
        double[] y = data.column("y");
        List<Observation> study = new ArrayList<>();
        for (int i = 0; i < y.length; i++) {
            study.add(new Observation(groups.get(i), y[i], List.of()));
        }
        return study;
    }

    private static double square(double x) {
        return x * x;
    }
}
