package io.github.tapwright.comparison;

import io.github.tapwright.mode.ModeName;
import io.github.tapwright.statistics.HolmAdjustment;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The probabilities of a comparison made larger for all its questions, so the maker must not read each as if it were the only one.
 *
 * <p>The frequencies of main air, main top and main back are what a maker asks first: they have {@value #PART_OF_MAIN} of the 5 %
 * between them, the many other questions the rest, shared alike within each kind. How the questions are answered does not change these parts, so the
 * 5 % hold for all together [Holm1979]. Where only one kind is asked, all weigh alike.
 */
final class AskedAtOnce {

    private static final Set<String> MAIN =
            Set.of(ModeName.MAIN_AIR.words(), ModeName.MAIN_TOP.words(), ModeName.MAIN_BACK.words());
    private static final double PART_OF_MAIN = 0.8;

    private AskedAtOnce() {}

    static List<ResonanceChange> adjusted(List<ResonanceChange> changes) {
        List<Difference> questions =
                changes.stream().flatMap(c -> c.questions().stream()).toList();
        double[] weights = weights(changes);
        double[] adjusted = HolmAdjustment.weighted(
                questions.stream().mapToDouble(Difference::probability).toArray(), weights);
        IdentityHashMap<Difference, Difference> asked = new IdentityHashMap<>();
        IntStream.range(0, adjusted.length)
                .forEach(i -> asked.put(questions.get(i), questions.get(i).asked(weights[i], adjusted[i])));
        return changes.stream()
                .map(c -> c.adjusted(d -> asked.getOrDefault(d, d)))
                .toList();
    }

    /** Whether some questions weigh more than others. */
    static boolean weighsUnlike(List<ResonanceChange> changes) {
        return main(changes).distinct().count() > 1;
    }

    private static Stream<Boolean> main(List<ResonanceChange> changes) {
        return changes.stream().flatMap(c -> c.questions().stream().map(d -> isMain(c, d)));
    }

    /** In the order of the questions, one in all. */
    private static double[] weights(List<ResonanceChange> changes) {
        List<Boolean> main = main(changes).toList();
        long mains = main.stream().filter(m -> m).count();
        long others = main.size() - mains;
        double ofMain = others == 0 ? 1 : PART_OF_MAIN;
        double ofOthers = mains == 0 ? 1 : 1 - PART_OF_MAIN;
        return main.stream()
                .mapToDouble(m -> m ? ofMain / mains : ofOthers / others)
                .toArray();
    }

    private static boolean isMain(ResonanceChange change, Difference question) {
        return question.quantity() == Quantity.FREQUENCY
                && change.name().filter(MAIN::contains).isPresent();
    }
}
