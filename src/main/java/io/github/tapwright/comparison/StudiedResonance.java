package io.github.tapwright.comparison;

import io.github.tapwright.mode.Resonance;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Summary;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * One resonance over the set-ups of a study.
 *
 * @param name the name that holds; empty if it has none
 * @param frequencyHz its scatter over the set-ups
 * @param q its scatter
 * @param levelDb scatter of its level against the resonance that serves as 0 dB in all set-ups; empty for that resonance
 */
public record StudiedResonance(
        Optional<String> name, SetUpScatter frequencyHz, SetUpScatter q, Optional<SetUpScatter> levelDb) {

    /**
     * How one figure scatters over p set-ups, each with its own uncertainty u from fit and strikes.
     *
     * <p>s_r² = mean of u², s_R² = variance of the p figures, s_L² = s_R² − s_r², not below zero. Source: [ISO5725-2], 7.4.5, with the
     * mean of each set-up's strikes as its result.
     *
     * @param mean over the set-ups
     * @param withinSetUp s_r of a sitting's figure
     * @param betweenSetUps s_L
     * @param reproducibility s_R of a sitting's figure
     */
    public record SetUpScatter(double mean, double withinSetUp, double betweenSetUps, double reproducibility) {

        /**
         * Of some set-ups.
         *
         * @param figures one of each set-up, with its own uncertainty, two at least
         * @return how they scatter
         */
        public static SetUpScatter of(List<Estimate> figures) {
            Summary summary =
                    Summary.of(figures.stream().mapToDouble(Estimate::value).toArray());
            double within = figures.stream()
                    .mapToDouble(e -> e.standardUncertainty() * e.standardUncertainty())
                    .average()
                    .orElseThrow();
            double all = summary.standardDeviation() * summary.standardDeviation();
            return new SetUpScatter(
                    summary.mean(), Math.sqrt(within), Math.sqrt(Math.max(0, all - within)), Math.sqrt(all));
        }
    }

    static StudiedResonance of(Optional<String> name, List<Resonance> inSetUps, List<Resonance> servingInSetUps) {
        List<Estimate> levels = IntStream.range(0, inSetUps.size())
                .mapToObj(s -> LevelReference.against(servingInSetUps.get(s), inSetUps.get(s)))
                .toList();
        return new StudiedResonance(
                name,
                scatter(inSetUps, Resonance::frequencyHz),
                scatter(inSetUps, Resonance::q),
                inSetUps.equals(servingInSetUps) ? Optional.empty() : Optional.of(SetUpScatter.of(levels)));
    }

    private static SetUpScatter scatter(List<Resonance> inSetUps, Function<Resonance, Estimate> figure) {
        return SetUpScatter.of(inSetUps.stream().map(figure).toList());
    }
}
