package io.github.tapwright.comparison;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingSummary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A sitting that was not used, and why.
 *
 * @param sitting its number
 * @param instrument whose it is
 * @param reason in words
 */
public record LeftOut(SittingId sitting, ShopNumber instrument, String reason) {

    /**
     * Leaves a sitting out.
     *
     * @param sitting which
     * @param reason in words
     * @return the entry of the list
     */
    public static LeftOut of(SittingOutline sitting, String reason) {
        return new LeftOut(sitting.id(), sitting.instrument(), reason);
    }

    /**
     * Why a sitting must be left out whatever is asked.
     *
     * @param sitting which
     * @return that the maker set it aside, with the maker's reason; empty if it is in use
     */
    public static Optional<String> reason(SittingOutline sitting) {
        return sitting.setAside().map(LeftOut::words);
    }

    /**
     * Parts what may be used from what must be left out.
     *
     * @param from in order
     * @param objection why one must be left out; empty if it may be used
     * @param leftOut takes those that must, in the same order
     * @return the others
     */
    public static List<SittingOutline> without(
            List<SittingOutline> from, Function<SittingOutline, Optional<String>> objection, List<LeftOut> leftOut) {
        List<SittingOutline> kept = new ArrayList<>();
        from.forEach(s -> objection.apply(s).ifPresentOrElse(why -> leftOut.add(of(s, why)), () -> kept.add(s)));
        return kept;
    }

    private static String words(OutOfUse setAside) {
        return "set aside: " + setAside.reason();
    }

    static LeftOut of(SittingSummary sitting, OutOfUse setAside) {
        return new LeftOut(sitting.id(), sitting.instrument(), words(setAside));
    }
}
