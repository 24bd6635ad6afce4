package io.github.tapwright.mode.body;

import io.github.tapwright.mode.body.BodyReadings.Load;
import io.github.tapwright.mode.body.BodyReadings.Measures;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.InputQuantity;
import io.github.tapwright.statistics.Interval;
import io.github.tapwright.statistics.MonteCarlo;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.random.RandomDataGenerator;

/**
 * One body many times over, each time with other readings out of their distributions. Source: [GUM-S1], 7.
 *
 * @param best with the best estimates
 * @param drawn the draws
 */
record BodyDraws(SolvedBody best, List<SolvedBody> drawn) {

    /** If more draws than this contradict the model, one cannot tell. */
    private static final double MOST_CONTRADICTING = 0.05;

    private static final InputQuantity END_CORRECTION = new InputQuantity.Rectangular(
            new Interval(HelmholtzFrequency.LEAST_CORRECTION, HelmholtzFrequency.GREATEST_CORRECTION));
    private static final double MIDDLE_CORRECTION = 1.7;

    static BodyDraws of(BodyReadings readings, MonteCarlo method) {
        RandomDataGenerator random = new RandomDataGenerator(method.seed());
        Function<Estimate, Double> draw = e -> new InputQuantity.Measured(e).draw(random);
        List<SolvedBody> drawn = new ArrayList<>(method.trials());
        for (int i = 0; i < method.trials(); i++) {
            drawn.add(body(readings, draw, END_CORRECTION.draw(random)));
        }
        return new BodyDraws(body(readings, Estimate::value, MIDDLE_CORRECTION), drawn);
    }

    /** Distribution of a quantity whose best value is known; draws that contradict the model are left out if they are few. */
    Answer answer(double value, BodyQuantity quantity) {
        return answer(value, drawn, b -> b.figure(quantity), quantity.need.remedy);
    }

    /** The same for anything made of the draws; the remedy is for the maker whose readings leave too much open. */
    static <T> Answer answer(double value, List<T> drawn, Function<T, Optional<Double>> figure, String remedy) {
        double[] figures = drawn.stream()
                .flatMap(b -> figure.apply(b).stream())
                .mapToDouble(x -> x)
                .sorted()
                .toArray();
        double lost = 1 - (double) figures.length / drawn.size();
        if (lost > MOST_CONTRADICTING) {
            return new Answer.Contradicted("cannot tell: within their uncertainty the readings contradict the model in "
                    + Math.round(100 * lost)
                    + " of 100 cases; " + remedy);
        }
        return new Answer.Inferred(
                value, deviation(figures), new Interval(quantile(figures, 0.025), quantile(figures, 0.975)));
    }

    private static double deviation(double[] figures) {
        double mean = Arrays.stream(figures).average().orElseThrow();
        double squares =
                Arrays.stream(figures).map(x -> (x - mean) * (x - mean)).sum();
        return Math.sqrt(squares / (figures.length - 1));
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    private static SolvedBody body(BodyReadings readings, Function<Estimate, Double> draw, double endCorrection) {
        Measures measures = readings.measures();
        Optional<Double> radius = positive(measures.holeRadiusMetres().map(draw));
        Optional<Double> thickness = positive(measures.topThicknessMetres().map(draw));
        return new SolvedBody(
                all(readings.openHz(), draw),
                readings.coveredHz().map(c -> all(c, draw)),
                readings.load().map(l -> load(l, draw)),
                positive(measures.volumeCubicMetres().map(draw)),
                radius.flatMap(a -> thickness.map(t -> new HelmholtzFrequency(a, t, endCorrection))),
                measures.air());
    }

    private static SolvedBody.PlainLoad load(Load load, Function<Estimate, Double> draw) {
        return new SolvedBody.PlainLoad(draw.apply(load.kilograms()), load.covered(), all(load.hz(), draw));
    }

    private static List<Double> all(List<Estimate> estimates, Function<Estimate, Double> draw) {
        return estimates.stream().map(draw).toList();
    }

    /** A measure whose uncertainty reaches below zero says nothing in the draws that do. */
    private static Optional<Double> positive(Optional<Double> measure) {
        return measure.filter(x -> x > 0);
    }
}
