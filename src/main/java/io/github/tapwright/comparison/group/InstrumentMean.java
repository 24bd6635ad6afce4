package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.statistics.ObservedGroup;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * One instrument in a group: the mean over its sittings, in the common air.
 *
 * <p>It keeps its figures as columns of numbers: ten thousand sittings have more than a hundred thousand of them, and to walk to each takes
 * longer than to reckon with it. Two of them are the same only if they are one: nobody compares columns that long.
 */
public final class InstrumentMean {

    private final ShopNumber instrument;
    private final List<SittingId> ids;
    private final double[] measured;
    private final double[] corrected;
    private final Optional<double[]> humidityPercent;
    private final double value;
    private final double humidityAdded;
    private final double temperatureAdded;

    /** Takes figures of one instrument, at least one, oldest first. */
    InstrumentMean(ShopNumber instrument, List<SittingFigure> figures) {
        if (figures.isEmpty()) {
            throw new IllegalArgumentException("instrument " + instrument + " has no figure");
        }
        this.instrument = instrument;
        ids = figures.stream().map(SittingFigure::sitting).toList();
        measured = column(figures, SittingFigure::measured);
        corrected = column(figures, SittingFigure::corrected);
        humidityPercent = figures.stream().allMatch(f -> f.humidityPercent().isPresent())
                ? Optional.of(column(figures, f -> f.humidityPercent().orElseThrow()))
                : Optional.empty();
        value = mean(corrected);
        humidityAdded = mean(column(figures, f -> f.added("humidity")));
        temperatureAdded = mean(column(figures, f -> f.added("temperature")));
    }

    private static double[] column(List<SittingFigure> figures, ToDoubleFunction<SittingFigure> of) {
        double[] column = new double[figures.size()];
        Arrays.setAll(column, i -> of.applyAsDouble(figures.get(i)));
        return column;
    }

    private static double mean(double[] column) {
        return Arrays.stream(column).average().orElseThrow();
    }

    /**
     * A sitting's part in the mean.
     *
     * @param sitting which
     * @param measured its figure as measured, in its unit
     * @param corrected the same in the common air
     */
    public record Part(SittingId sitting, double measured, double corrected) {}

    /**
     * Which instrument it is.
     *
     * @return its shop number
     */
    public ShopNumber instrument() {
        return instrument;
    }

    /**
     * What the mean is made of.
     *
     * @return one part for each sitting, at least one, oldest first
     */
    public List<Part> sittings() {
        return IntStream.range(0, ids.size())
                .mapToObj(i -> new Part(ids.get(i), measured[i], corrected[i]))
                .toList();
    }

    /**
     * The instrument's figure.
     *
     * @return mean of the corrected figures, in their unit
     */
    public double value() {
        return value;
    }

    /** What the humidity contributed to the correction, on average over sittings. */
    double humidityAdded() {
        return humidityAdded;
    }

    /** What the temperature contributed. */
    double temperatureAdded() {
        return temperatureAdded;
    }

    int count() {
        return measured.length;
    }

    /** Whether it is known at every sitting. */
    boolean humidityKnown() {
        return humidityPercent.isPresent();
    }

    /** Whether it is known and not always the same. */
    boolean humidityVaries() {
        return humidityPercent.isPresent() && !ObservedGroup.isConstant(humidityPercent.get());
    }

    /** Its sittings in a mixed model: as measured and with their humidity, or in the common air. */
    ObservedGroup observed(double indicator, boolean withHumidity) {
        double[] indicators = new double[count()];
        Arrays.fill(indicators, indicator);
        return withHumidity
                ? ObservedGroup.of(measured, indicators, humidityPercent.orElseThrow())
                : ObservedGroup.of(corrected, indicators);
    }
}
