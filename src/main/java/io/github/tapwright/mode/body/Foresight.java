package io.github.tapwright.mode.body;

import io.github.tapwright.mode.HoleState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Carries every draw of a body through a change. */
final class Foresight {

    private static final String REMEDY = BodyQuantity.TAP_MORE + ", or choose a smaller change";

    private Foresight() {}

    static Prediction of(BodyDraws draws, BodyChange change) {
        Optional<List<Double>> best = resonances(draws.best(), change);
        if (best.isEmpty()) {
            return new Prediction.Refused("this change would leave no mass, no hole or no air; choose a smaller one");
        }
        // Each draw's resonances are needed twice for each of them; they are the costly part.
        List<Change> all = draws.drawn().stream()
                .map(b -> new Change(b.openHz(), resonances(b, change)))
                .toList();
        List<Prediction.Moved> moved = new ArrayList<>();
        for (int i = 0; i < best.get().size(); i++) {
            int index = i;
            double before = draws.best().openHz().get(i);
            double after = best.get().get(i);
            Answer place = BodyDraws.answer(after, all, c -> c.after.map(a -> a.get(index)), REMEDY);
            Answer shift = BodyDraws.answer(
                    after - before, all, c -> c.after.map(a -> a.get(index) - c.before.get(index)), REMEDY);
            if (!(place instanceof Answer.Inferred at) || !(shift instanceof Answer.Inferred by)) {
                return new Prediction.Refused(place instanceof Answer.Contradicted c ? c.why() : "cannot tell");
            }
            moved.add(new Prediction.Moved(before, at, by));
        }
        return new Prediction.Foreseen(moved);
    }

    private static Optional<List<Double>> resonances(SolvedBody body, BodyChange change) {
        return change.apply(body).map(f -> f.resonancesHz(HoleState.OPEN));
    }

    /** One draw before and after; empty where the draw contradicts the model. */
    private record Change(List<Double> before, Optional<List<Double>> after) {}
}
