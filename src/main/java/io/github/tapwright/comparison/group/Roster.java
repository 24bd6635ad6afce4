package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.instrument.ShopNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Sittings sorted by group and instrument once, whatever is then asked of them.
 *
 * @param <T> a sitting and whatever a question needs to know of it
 */
final class Roster<T> {

    private final Map<String, Map<String, List<T>>> byInstrument = new TreeMap<>();

    /** Enters a sitting; those of one instrument oldest first. */
    void add(String group, ShopNumber instrument, T sitting) {
        byInstrument
                .computeIfAbsent(group, g -> new TreeMap<>())
                .computeIfAbsent(instrument.text(), n -> new ArrayList<>())
                .add(sitting);
    }

    /** One quantity of every group that has it. */
    Map<String, GroupSample> samples(Function<T, Optional<SittingFigure>> figure) {
        Map<String, GroupSample> samples = new TreeMap<>();
        byInstrument.forEach((group, instruments) -> {
            List<InstrumentMean> means = new ArrayList<>();
            instruments.forEach((number, sittings) -> {
                List<SittingFigure> figures = new ArrayList<>(sittings.size());
                sittings.forEach(s -> figure.apply(s).ifPresent(figures::add));
                if (!figures.isEmpty()) {
                    means.add(new InstrumentMean(new ShopNumber(number), figures));
                }
            });
            if (!means.isEmpty()) {
                samples.put(group, new GroupSample(new GroupFigures(group, means)));
            }
        });
        return samples;
    }
}
