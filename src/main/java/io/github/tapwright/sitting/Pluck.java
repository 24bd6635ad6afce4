package io.github.tapwright.sitting;

import java.util.List;
import java.util.Optional;

/**
 * How loud one pluck of an open string was.
 *
 * @param file which recording it came from, from 0
 * @param attackSeconds when it begins there
 * @param string which string, 1 the highest; empty where its pitch is that of no open string
 * @param lafMaxDb largest A-weighted level, time weighting F, dB re full scale or 20 µPa
 * @param momentaryMaxLufs largest loudness of 400 ms, LUFS; empty if the pluck is shorter
 * @param maximumSone largest loudness, sone; empty without a calibration
 * @param warnings what speaks against this pluck, such as clipping
 */
public record Pluck(
        int file,
        double attackSeconds,
        Optional<Integer> string,
        Optional<Double> lafMaxDb,
        Optional<Double> momentaryMaxLufs,
        Optional<Double> maximumSone,
        List<String> warnings) {

    /** Keeps a copy of the list. */
    public Pluck {
        warnings = List.copyOf(warnings);
    }

    Pluck withoutSone() {
        return new Pluck(file, attackSeconds, string, lafMaxDb, momentaryMaxLufs, Optional.empty(), warnings);
    }
}
