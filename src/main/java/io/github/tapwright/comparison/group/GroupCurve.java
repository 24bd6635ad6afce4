package io.github.tapwright.comparison.group;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.level.band.Band;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Interval;
import io.github.tapwright.statistics.Summary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The response of a group in third octaves, level taken out.
 *
 * <p>Each instrument is the mean over its sittings of {@link ThirdOctaveShape}, the group the mean over instruments; the band is mean
 * ± t·s/√n. It holds each band by itself, not all of them together.
 *
 * @param group its name in the plural
 * @param instruments n
 * @param bands lowest first
 */
public record GroupCurve(String group, int instruments, List<BandMean> bands) {

    /** Keeps a copy of the list. */
    public GroupCurve {
        bands = List.copyOf(bands);
    }

    /**
     * One third octave.
     *
     * @param band which
     * @param meanDb mean over instruments, dB re the mean over all bands
     * @param interval95 of the mean; empty with fewer than {@link GroupFigures#FEWEST} instruments
     */
    public record BandMean(Band band, double meanDb, Optional<Interval> interval95) {}

    static List<GroupCurve> of(List<String> groups, Selection selection) {
        List<Band> bands = ThirdOctaveShape.commonBands(selection.taps());
        return bands.isEmpty()
                ? List.of()
                : groups.stream()
                        .map(g -> of(g, selection, bands))
                        .filter(c -> c.instruments() > 0)
                        .toList();
    }

    private static GroupCurve of(String group, Selection selection, List<Band> bands) {
        Map<ShopNumber, List<SittingOutline>> members = selection.taps(group).stream()
                .filter(s -> s.thirdOctaves().isPresent())
                .collect(Collectors.groupingBy(SittingOutline::instrument));
        List<double[]> shapes =
                members.values().parallelStream().map(own -> mean(own, bands)).toList();
        List<BandMean> means = new ArrayList<>();
        for (int i = 0; i < bands.size() && !shapes.isEmpty(); i++) {
            int band = i;
            means.add(mean(
                    bands.get(band), shapes.stream().mapToDouble(s -> s[band]).toArray()));
        }
        return new GroupCurve(group, shapes.size(), means);
    }

    private static double[] mean(List<SittingOutline> own, List<Band> bands) {
        double[] mean = new double[bands.size()];
        for (SittingOutline sitting : own) {
            double[] shape = ThirdOctaveShape.of(sitting, bands);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += shape[i] / own.size();
            }
        }
        return mean;
    }

    private static BandMean mean(Band band, double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        if (values.length < GroupFigures.FEWEST) {
            return new BandMean(band, mean, Optional.empty());
        }
        return new BandMean(band, mean, Optional.of(Summary.of(values).ofMean().interval95()));
    }
}
