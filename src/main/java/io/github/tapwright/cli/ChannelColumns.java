package io.github.tapwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Rows of a table with a column for each channel. */
final class ChannelColumns {

    /** Stands where a channel has no figure. */
    static final String NONE = "none";

    private ChannelColumns() {}

    static String title(int channel) {
        return "channel " + (channel + 1);
    }

    static String[] row(String first, int channels, IntFunction<String> cell, String last) {
        List<String> cells = new ArrayList<>(List.of(first));
        IntStream.range(0, channels).mapToObj(cell).forEach(cells::add);
        cells.add(last);
        return cells.toArray(String[]::new);
    }
}
