package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.statistics.Observation;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One quantity of a group as numbers, worked out once however many other groups it is compared with: of ten thousand sittings the
 * figures lie far apart in memory, and walking to them takes longer than reckoning with them.
 */
final class GroupSample {

    private final GroupFigures figures;
    private final double[] means;
    private final double humidityAdded;
    private final double temperatureAdded;
    private final int sittings;
    private final boolean humidityKnown;
    private final boolean humidityVaries;

    GroupSample(GroupFigures figures) {
        this.figures = figures;
        this.means = figures.values();
        this.humidityAdded = figures.added("humidity");
        this.temperatureAdded = figures.added("temperature");
        this.sittings = (int) sittings(figures).count();
        this.humidityKnown = sittings(figures).allMatch(s -> s.humidityPercent().isPresent());
        this.humidityVaries = figures.instruments().stream().anyMatch(GroupSample::humidityVaries);
    }

    private static Stream<SittingFigure> sittings(GroupFigures figures) {
        return figures.instruments().stream().flatMap(i -> i.sittings().stream());
    }

    private static boolean humidityVaries(InstrumentMean instrument) {
        Optional<Double> first = instrument.sittings().get(0).humidityPercent();
        return instrument.sittings().stream().anyMatch(s -> !s.humidityPercent().equals(first));
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

    /** Whether it varies within any instrument. */
    boolean humidityVaries() {
        return humidityVaries;
    }

    /** Adds every sitting; the indicator comes as an object, one for all the thousands there may be. */
    void addTo(List<Observation> observations, Double indicator, boolean humidity) {
        List<Double> alone = List.of(indicator);
        for (InstrumentMean instrument : figures.instruments()) {
            for (SittingFigure s : instrument.sittings()) {
                observations.add(
                        humidity
                                ? new Observation(
                                        instrument.instrument().text(),
                                        s.measured(),
                                        List.of(indicator, s.humidityPercent().orElseThrow()))
                                : new Observation(instrument.instrument().text(), s.corrected(), alone));
            }
        }
    }
}
