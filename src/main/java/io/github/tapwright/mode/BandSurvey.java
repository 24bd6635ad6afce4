package io.github.tapwright.mode;

import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds the shared poles of all decays, band by band.
 *
 * <p>The range is cut into bands of some 120 Hz. Each is fitted in a window that reaches 45 Hz beyond it to
 * either side, and keeps the poles that fall into the band itself. Then every band is fitted again with the
 * poles beyond its window taken off, so that far tails do not pull.
 */
final class BandSurvey {

    private static final double BAND_HZ = 120;
    private static final double MARGIN_HZ = 45;
    private static final double BELOW_HZ = 40;
    private static final double ABOVE = 1.1;
    private static final double BROADEST_HZ = 60;
    private static final double BEYOND_HZ = 25;
    private static final int POLISHES = 2;
    private static final int POLISH_STEPS = 12;

    private final DecaySpectra spectra;
    private final double[] edgesHz;

    BandSurvey(DecaySpectra spectra, TapSettings settings) {
        this.spectra = spectra;
        double lowHz = Math.max(15, settings.lowHz() - BELOW_HZ);
        double highHz = Math.min(0.45 * spectra.rateHz(), ABOVE * settings.highHz());
        int bands = (int) Math.max(1, Math.round((highHz - lowHz) / BAND_HZ));
        edgesHz = new double[bands + 1];
        for (int b = 0; b <= bands; b++) {
            edgesHz[b] = lowHz + b * (highHz - lowHz) / bands;
        }
    }

    /** A shared mode together with the fit it came from and all models of the band that come near it. */
    record Found(SharedMode mode, PoleFit fit, int index, List<ModelAverage.Model> models) {}

    /** What a band gave by itself: the first guesses, and what a fit from there found. */
    private record Begun(List<Pole> guess, List<Found> found) {}

    /** All shared modes, lowest first. */
    List<Found> modes() {
        List<Begun> begun = inEachBand(this::begin);
        List<List<Pole>> guesses = begun.stream().map(Begun::guess).toList();
        List<Found> found = together(begun.stream().map(Begun::found).toList());
        for (int i = 0; i < POLISHES; i++) {
            boolean last = i == POLISHES - 1;
            found = polished(found, guesses, last);
        }
        found.sort(Comparator.comparingDouble(f -> f.mode().pole().omega()));
        return withoutDoubles(found);
    }

    /** No band's work depends on another's, so all processors share it and the results are the same to the last bit. */
    private <T> List<T> inEachBand(IntFunction<T> work) {
        return IntStream.range(0, edgesHz.length - 1).parallel().mapToObj(work).toList();
    }

    private static List<Found> together(List<List<Found>> bands) {
        return bands.stream().flatMap(List::stream).collect(Collectors.toCollection(ArrayList::new));
    }

    private double lowHz(int band) {
        return edgesHz[band] - MARGIN_HZ;
    }

    private double highHz(int band) {
        return edgesHz[band + 1] + MARGIN_HZ;
    }

    private Begun begin(int band) {
        List<Pole> guess = guess(band);
        return new Begun(guess, inBand(first(band, guess), band, List.of()));
    }

    private List<Pole> guess(int band) {
        SubspacePoles subspace = new SubspacePoles(spectra, lowHz(band), highHz(band));
        return StablePoles.in(subspace, lowHz(band) - BEYOND_HZ, highHz(band) + BEYOND_HZ);
    }

    private PoleFit first(int band, List<Pole> guess) {
        return new OrderSearch(SpectralWindow.of(spectra, lowHz(band), highHz(band), List.of())).fromGuess(guess);
    }

    /** A pole on the edge of two bands may be found in both, a little to either side; the stronger one stays. */
    private static List<Found> withoutDoubles(List<Found> found) {
        List<Found> single = new ArrayList<>();
        for (Found f : found) {
            Found before = single.isEmpty() ? null : single.get(single.size() - 1);
            if (before == null
                    || before.fit() == f.fit()
                    || !before.mode().pole().isTwinOf(f.mode().pole())) {
                single.add(f);
            } else if (f.mode().meanHeightDb() > before.mode().meanHeightDb()) {
                single.set(single.size() - 1, f);
            }
        }
        return single;
    }

    private List<Found> polished(List<Found> found, List<List<Pole>> guesses, boolean last) {
        List<DecaySpectra> laterStarts = last ? StartTimeSpread.laterStarts(spectra) : List.of();
        return together(inEachBand(b -> polished(b, found, guesses.get(b), laterStarts, last)));
    }

    private List<Found> polished(
            int band, List<Found> found, List<Pole> guess, List<DecaySpectra> laterStarts, boolean last) {
        List<SharedMode> outside = new ArrayList<>();
        List<Pole> inside = new ArrayList<>();
        for (Found f : found) {
            double hz = f.mode().pole().dampedHz();
            if (hz > lowHz(band) && hz < highHz(band)) {
                inside.add(f.mode().pole());
            } else if (f.mode().pole().widthHz() < BROADEST_HZ) {
                outside.add(f.mode());
            }
        }
        SpectralWindow window = SpectralWindow.of(spectra, lowHz(band), highHz(band), outside);
        OrderSearch search = new OrderSearch(window);
        PoleFit fit = polished(search, window, inside, guess);
        if (!last) {
            return inBand(fit, band, List.of());
        }
        List<OrderChoice.Rival> rivals = OrderChoice.rivals(search.visited());
        List<ModelAverage.Model> models = rivals.stream()
                .map(rival -> model(
                        rival,
                        StartTimeSpread.laterFits(
                                spectra, laterStarts, rival.fit(), outside, lowHz(band), highHz(band))))
                .toList();
        return inBand(rivals.get(0).fit(), band, models);
    }

    private static ModelAverage.Model model(OrderChoice.Rival rival, List<PoleFit> laterFits) {
        List<List<PoleEstimate>> later =
                laterFits.stream().map(PoleUncertainty::of).toList();
        return new ModelAverage.Model(PoleUncertainty.of(rival.fit()), later, rival.weight());
    }

    /** From where the poles were, and, where that leaves much over, once more from the first guesses. */
    private static PoleFit polished(OrderSearch search, SpectralWindow window, List<Pole> inside, List<Pole> guess) {
        PoleFit fit = search.settle(PoleRefinement.refine(window, inside, POLISH_STEPS));
        if (!OrderChoice.oneMoreMayEarn(fit, fit)) {
            return fit;
        }
        PoleFit anew = search.fromGuess(guess);
        return OrderChoice.isBetter(anew, fit) ? anew : fit;
    }

    private List<Found> inBand(PoleFit fit, int band, List<ModelAverage.Model> models) {
        List<Found> found = new ArrayList<>();
        List<SharedMode> modes = fit.modes();
        for (int m = 0; m < modes.size(); m++) {
            double hz = modes.get(m).pole().dampedHz();
            if (hz >= edgesHz[band] && hz < edgesHz[band + 1]) {
                found.add(new Found(modes.get(m), fit, m, models));
            }
        }
        return found;
    }
}
