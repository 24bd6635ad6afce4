package io.github.tapwright.comparison.body;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.mode.body.BodyChange;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.statistics.Estimate;
import java.util.Optional;

/**
 * Which body to fit, and what is known besides the sittings.
 *
 * @param open the sitting with the hole open
 * @param covered with the hole covered; empty to look for it
 * @param loaded with an added mass; empty to look for it
 * @param spread how far setting up again moves figures; empty for the study kept, or cautious figures
 * @param backDemanded true to refuse unless the main back was found in every sitting; else it takes part if it was
 * @param box measures of the box
 * @param change what to think about; empty for nothing
 */
public record BodyRequest(
        SittingId open,
        Optional<SittingId> covered,
        Optional<SittingId> loaded,
        Optional<SetUpSpread> spread,
        boolean backDemanded,
        Box box,
        Optional<BodyChange> change) {

    /**
     * Measures the maker gives; what is left out is taken from the instrument if it is known there.
     *
     * @param volumeLitres with its standard uncertainty
     * @param holeRadiusMm a
     * @param topThicknessMm t at the hole's edge
     */
    public record Box(
            Optional<Estimate> volumeLitres, Optional<Double> holeRadiusMm, Optional<Double> topThicknessMm) {}
}
