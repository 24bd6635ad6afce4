package io.github.tapwright.comparison.group;

import io.github.tapwright.statistics.ObservedGroup;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** What is asked of one quantity of a group, worked out once however many other groups it is compared with. */
final class GroupSample {

    private final GroupFigures figures;
    private final double[] means;
    private final double humidityAdded;
    private final double temperatureAdded;
    private final int sittings;
    private final boolean humidityKnown;
    private final boolean humidityVaries;

    GroupSample(GroupFigures figures) {
        List<InstrumentMean> instruments = figures.instruments();
        this.figures = figures;
        this.means = figures.values();
        this.humidityAdded = mean(instruments, InstrumentMean::humidityAdded);
        this.temperatureAdded = mean(instruments, InstrumentMean::temperatureAdded);
        this.sittings = instruments.stream().mapToInt(InstrumentMean::count).sum();
        this.humidityKnown = instruments.stream().allMatch(InstrumentMean::humidityKnown);
        this.humidityVaries = instruments.stream().anyMatch(InstrumentMean::humidityVaries);
    }

    private static double mean(List<InstrumentMean> instruments, ToDoubleFunction<InstrumentMean> of) {
        return instruments.stream().mapToDouble(of).average().orElseThrow();
    }

    GroupFigures figures() {
        return figures;
    }

    int count() {
        return means.length;
    }

    /** The instruments' figures; not to be changed. */
    double[] means() {
        return means;
    }

    /** What the humidity contributed to the correction, on average over instruments. */
    double humidityAdded() {
        return humidityAdded;
    }

    /** What the temperature contributed. */
    double temperatureAdded() {
        return temperatureAdded;
    }

    int sittings() {
        return sittings;
    }

    boolean humidityKnown() {
        return humidityKnown;
    }

    /** Whether it varies within any instrument that knows it. */
    boolean humidityVaries() {
        return humidityVaries;
    }

    /** Every instrument's sittings, the group told by an indicator. */
    Stream<ObservedGroup> observed(double indicator, boolean withHumidity) {
        return figures.instruments().stream().map(i -> i.observed(indicator, withHumidity));
    }
}
