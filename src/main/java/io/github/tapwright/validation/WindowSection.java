package io.github.tapwright.validation;

import io.github.tapwright.signal.Window;
import io.github.tapwright.signal.WindowFigures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Figures of merit of the data windows. */
final class WindowSection implements Section {

    private static final int LENGTH = 1024;
    private static final String LAST_DIGIT = "half a unit of the last digit printed";

    @Override
    public String title() {
        return "Spectrum and windows";
    }

    @Override
    public String about() {
        return "What each data window does to lines and noise, measured on its 1024 periodic samples.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        PublishedTable.rows("windows/harris-1978-table-1.csv").forEach(row -> {
            add(checks, row, "coherent_gain", "", 0.0051, LAST_DIGIT, WindowFigures::coherentGain);
            add(checks, row, "noise_bandwidth_bins", "bins", 0.0051, LAST_DIGIT, WindowFigures::noiseBandwidthBins);
            add(checks, row, "worst_case_loss_db", "dB", 0.0051, LAST_DIGIT, WindowFigures::worstCaseLossDb);
            add(
                    checks,
                    row,
                    "highest_sidelobe_db",
                    "dB",
                    0.55,
                    "printed in whole decibels",
                    WindowFigures::highestSidelobeDb);
        });
        PublishedTable.rows("windows/figures.csv").forEach(row -> {
            add(checks, row, "scalloping_loss_db", "dB", 1.5e-5, LAST_DIGIT, WindowFigures::scallopingLossDb);
            add(checks, row, "half_power_width_bins", "bins", 5.1e-6, LAST_DIGIT, WindowFigures::halfPowerWidthBins);
            add(checks, row, "overlap_correlation_50", "", 5.1e-6, LAST_DIGIT, WindowFigures::overlapCorrelation50);
        });
        return checks;
    }

    private static void add(
            List<Check> checks,
            PublishedRow row,
            String column,
            String unit,
            double within,
            String reason,
            ToDoubleFunction<WindowFigures> figure) {
        Window window = Window.valueOf(row.text("window"));
        String name = Arrays.stream(window.name().split("_"))
                .map(w -> w.charAt(0) + w.substring(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" "));
        String quantity = column.replaceAll("_(db|bins)$", "").replace('_', ' ');
        checks.add(new Check(
                name + ", " + quantity,
                row.number(column),
                unit,
                row.text("source"),
                Tolerance.within(within, reason),
                () -> figure.applyAsDouble(window.figures(LENGTH))));
    }
}
