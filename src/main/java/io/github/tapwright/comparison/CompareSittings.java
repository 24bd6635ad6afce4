package io.github.tapwright.comparison;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Compares two sittings: conditions first, then figures. */
public final class CompareSittings {

    private final SittingStore sittings;
    private final StudyBench studies;

    /**
     * Joins the use case with what it needs.
     *
     * @param sittings where sittings are kept
     * @param studies what knows how far setting up again moves figures
     */
    public CompareSittings(SittingStore sittings, StudyBench studies) {
        this.sittings = sittings;
        this.studies = studies;
    }

    /**
     * How to compare.
     *
     * @param spread how far setting up again moves figures; empty for the study that holds, or cautious figures
     * @param window the humidity the shop keeps
     * @param despite the maker's reason to see refused figures all the same; empty to leave them out
     */
    public record Settings(Optional<SetUpSpread> spread, ShopWindow window, Optional<String> despite) {}

    /**
     * Two sittings, what was known about the bench, and how they compare.
     *
     * @param first before
     * @param second after
     * @param bench what was known
     * @param comparison what was found
     */
    public record Compared(Sitting first, Sitting second, BenchKnowledge bench, SittingComparison comparison)
            implements TwoSittings {

        @Override
        public Comparability comparability() {
            return comparison.comparability();
        }
    }

    /**
     * Compares two sittings of taps.
     *
     * @param a before
     * @param b after
     * @param settings how
     * @return the comparison
     * @throws RefusedEntryException if there is no such sitting, one is set aside, both are the same, or one is not of taps
     */
    public Compared compare(SittingId a, SittingId b, Settings settings) {
        if (a.equals(b)) {
            throw new RefusedEntryException("both are sitting " + a + "; choose two different ones");
        }
        Sitting first = ofTaps(a);
        Sitting second = ofTaps(b);
        HumiditySensitivities sensitivities =
                new SensitivityLearning(sittings).of(first.instrument(), second.instrument());
        BenchKnowledge bench = new BenchKnowledge(studies.spread(settings.spread()), settings.window(), sensitivities);
        return new Compared(first, second, bench, SittingComparison.of(first, second, bench, settings.despite()));
    }

    /**
     * The latest sitting of taps of an instrument.
     *
     * @param instrument whose
     * @return its number
     * @throws RefusedEntryException if there is none
     */
    public SittingId latest(ShopNumber instrument) {
        return sittings.lastOfTaps(instrument).orElseThrow(() -> new RefusedEntryException(none(instrument)));
    }

    private String none(ShopNumber instrument) {
        String aside = passedOver(instrument).stream()
                .map(left -> "sitting " + left.sitting() + ", " + left.reason())
                .collect(Collectors.joining("; "));
        return aside.isEmpty()
                ? "instrument " + instrument + " has no sitting of taps yet; add one, or compare others"
                : "instrument " + instrument + " has no sitting of taps in use (" + aside
                        + "); add one, take one back, or compare others";
    }

    /**
     * What {@link #latest} passed over.
     *
     * @param instrument whose
     * @return its sittings of taps taken later, which are set aside, oldest first
     */
    public List<LeftOut> passedOver(ShopNumber instrument) {
        Optional<SittingId> latest = sittings.lastOfTaps(instrument);
        List<LeftOut> later = new ArrayList<>();
        for (SittingSummary sitting : sittings.list(Optional.of(instrument))) {
            if (Optional.of(sitting.id()).equals(latest)) {
                later.clear();
            } else if (sitting.wasMadeForTheBodyAsItIs()) {
                sitting.setAside().ifPresent(why -> later.add(LeftOut.of(sitting, why)));
            }
        }
        return later;
    }

    private Sitting ofTaps(SittingId id) {
        return new ShowSitting(sittings).use(id).requireTaps();
    }
}
