package io.github.tapwright.comparison.listening;

import io.github.tapwright.sitting.listening.ListeningTrial;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The questions of a blind listening, as they follow from its seed.
 *
 * <p>Every pair of sounds comes as often as any other, or once more; their order, which of the two is called A, and
 * which of them X is, are chance: fair coins independent of each other, so that right guesses are binomial with p = ½.
 * The generator is {@link Random}, whose algorithm its documentation prescribes, so that a seed means the same for ever.
 */
final class TrialPlan {

    private TrialPlan() {}

    static List<ListeningTrial> of(long seed, int trialCount, int soundCount) {
        Random chance = new Random(seed);
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < soundCount; i++) {
            for (int j = i + 1; j < soundCount; j++) {
                pairs.add(new int[] {i, j});
            }
        }
        Collections.shuffle(pairs, chance);
        List<ListeningTrial> trials = new ArrayList<>();
        for (int t = 0; t < trialCount; t++) {
            int[] pair = pairs.get(t % pairs.size());
            boolean turned = chance.nextBoolean();
            trials.add(new ListeningTrial(pair[turned ? 1 : 0], pair[turned ? 0 : 1], chance.nextBoolean()));
        }
        Collections.shuffle(trials, chance);
        return trials;
    }
}
