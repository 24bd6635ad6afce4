package io.github.tapwright.comparison.group;

import io.github.tapwright.statistics.Summary;
import java.util.List;
import java.util.Optional;

/**
 * One quantity of all instruments of a group.
 *
 * @param group its name in the plural, such as "solid tops"
 * @param instruments by shop number, at least one
 */
public record GroupFigures(String group, List<InstrumentMean> instruments) {

    /** Fewer instruments in a group claim nothing. */
    public static final int FEWEST = 3;

    /** Keeps a copy of the list. */
    public GroupFigures {
        instruments = List.copyOf(instruments);
    }

    /**
     * How many instruments there are.
     *
     * @return n
     */
    public int count() {
        return instruments.size();
    }

    /**
     * The group's mean, each instrument weighing the same.
     *
     * @return in the quantity's unit
     */
    public double mean() {
        return instruments.stream().mapToDouble(InstrumentMean::value).average().orElseThrow();
    }

    /**
     * Mean and scatter of the instruments.
     *
     * @return empty with one instrument
     */
    public Optional<Summary> summary() {
        return count() < 2 ? Optional.empty() : Optional.of(Summary.of(values()));
    }

    double[] values() {
        return instruments.stream().mapToDouble(InstrumentMean::value).toArray();
    }
}
