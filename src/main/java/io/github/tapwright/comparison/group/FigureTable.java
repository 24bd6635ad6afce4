package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.instrument.ShopNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The figures of one subject as they come, sorted by group and instrument. */
final class FigureTable {

    private final Map<String, Map<String, List<SittingFigure>>> byInstrument = new TreeMap<>();

    void add(String group, ShopNumber instrument, SittingFigure figure) {
        byInstrument
                .computeIfAbsent(group, g -> new TreeMap<>())
                .computeIfAbsent(instrument.text(), n -> new ArrayList<>())
                .add(figure);
    }

    Map<String, GroupFigures> groups() {
        Map<String, GroupFigures> figures = new TreeMap<>();
        byInstrument.forEach((group, instruments) -> figures.put(
                group,
                new GroupFigures(
                        group,
                        instruments.entrySet().stream()
                                .map(e -> new InstrumentMean(new ShopNumber(e.getKey()), e.getValue()))
                                .toList())));
        return figures;
    }
}
