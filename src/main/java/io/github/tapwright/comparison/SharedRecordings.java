package io.github.tapwright.comparison;

import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A recording kept in several sittings is one measurement, not several. */
public final class SharedRecordings {

    private SharedRecordings() {}

    /**
     * The sittings without those that hold a recording of an earlier one among them.
     *
     * @param ordered sittings, oldest first
     * @param sharing the sittings of each recording that more than one of them holds, as
     *     {@link io.github.tapwright.sitting.SittingStore#sharing} gives them
     * @param leftOut takes up the others with their reason
     * @return those that count
     */
    public static List<SittingOutline> once(
            List<SittingOutline> ordered, List<List<SittingId>> sharing, List<LeftOut> leftOut) {
        return once(
                ordered,
                SittingOutline::id,
                sharing,
                (sitting, earlier) -> leftOut.add(LeftOut.of(
                        sitting, "it holds the same recording as sitting " + earlier + ", which counts already")));
    }

    /** The same of anything that stands for a sitting; who is left out is handed over with the sitting that counts. */
    static <T> List<T> once(
            List<T> ordered,
            Function<T, SittingId> id,
            List<List<SittingId>> sharing,
            BiConsumer<T, SittingId> leftOut) {
        Map<SittingId, Set<SittingId>> alike = new HashMap<>();
        sharing.forEach(holders -> holders.forEach(
                holder -> alike.computeIfAbsent(holder, i -> new HashSet<>()).addAll(holders)));
        List<T> counted = new ArrayList<>();
        Map<SittingId, SittingId> standsFor = new HashMap<>();
        for (T sitting : ordered) {
            SittingId own = id.apply(sitting);
            SittingId earlier = standsFor.get(own);
            if (earlier != null) {
                leftOut.accept(sitting, earlier);
            } else {
                counted.add(sitting);
                alike.getOrDefault(own, Set.of()).forEach(copy -> standsFor.putIfAbsent(copy, own));
            }
        }
        return counted;
    }

    /** The file name of a recording that both sittings hold, as the first calls it. */
    static Optional<String> shared(Sitting first, Sitting second) {
        Set<String> ofSecond =
                second.recordings().stream().map(r -> r.original().sha256()).collect(Collectors.toSet());
        return first.recordings().stream()
                .filter(r -> ofSecond.contains(r.original().sha256()))
                .map(KeptRecording::fileName)
                .findFirst();
    }
}
