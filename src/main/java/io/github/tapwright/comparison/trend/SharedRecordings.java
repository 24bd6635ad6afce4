package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** A recording kept in several sittings is one point in time, not several. */
final class SharedRecordings {

    private SharedRecordings() {}

    /** The sittings without those that hold a recording of an earlier one among them; these are left out with their reason. */
    static List<SittingOutline> once(
            List<SittingOutline> ordered, List<List<SittingId>> sharing, List<LeftOut> leftOut) {
        List<SittingOutline> counted = new ArrayList<>();
        for (SittingOutline sitting : ordered) {
            Set<SittingId> alike = sharing.stream()
                    .filter(holders -> holders.contains(sitting.id()))
                    .flatMap(List::stream)
                    .collect(Collectors.toSet());
            Optional<SittingId> earlier = counted.stream()
                    .map(SittingOutline::id)
                    .filter(alike::contains)
                    .findFirst();
            earlier.ifPresentOrElse(
                    id -> leftOut.add(LeftOut.of(
                            sitting, "it holds the same recording as sitting " + id + ", which counts already")),
                    () -> counted.add(sitting));
        }
        return counted;
    }
}
