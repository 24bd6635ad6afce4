package io.github.tapwright.note;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.StringNote;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;

/**
 * 200 seeded notes of two planes 60 dB above the noise, and 200 of one plane at 40 dB: the 95 % intervals must hold the truth
 * in 92 to 98 % (three standard deviations of chance are 4.6 % for one number a note, 2.1 % for five).
 */
class NoteCoveragePropertyTest {

    private static final int TRIALS = 200;
    private static final double RATE_HZ = 11_025;

    private final Map<String, int[]> counts = new TreeMap<>();
    private final Map<String, Double> largest = new TreeMap<>();

    @Test
    void intervalsOfPitchStretchAndTwoStagesHoldTheTruth() {
        RandomGenerator chance = Chance.seeded(2026);
        for (int t = 0; t < TRIALS; t++) {
            StringNote string = StringNote.plain(chance.nextDouble(140, 320), chance.nextDouble(3e-5, 2e-4), 0.8, 3)
                    .inTwoPlanes(chance.nextDouble(3, 5), chance.nextDouble(0.15, 0.4), 0)
                    .damped(0.05);
            NoteResult result = NoteAnalysis.analyse(string.recording(RATE_HZ, chance).stream(), NoteSettings.STANDARD);
            countSeries(string, result);
            for (Partial p : result.partials()) {
                if (p.number() <= 5 && p.decay() instanceof PartialDecay.TwoStage two) {
                    count("early decay time", two.earlyDecayTimeSeconds(), string.earlySeconds(p.number()));
                    count("late decay time", two.lateDecayTimeSeconds(), string.lateSeconds(p.number()));
                }
            }
        }
        assertThat(counts.get("late decay time")[1]).isEqualTo(5 * TRIALS);
        check();
    }

    @Test
    void intervalsOfOneStageAndOfTheWholeDecayHoldTheTruth() {
        RandomGenerator chance = Chance.seeded(2027);
        for (int t = 0; t < TRIALS; t++) {
            StringNote string = StringNote.plain(
                            chance.nextDouble(140, 320), chance.nextDouble(3e-5, 2e-4), chance.nextDouble(0.6, 1.2), 2)
                    .inNoise(40, 0.3);
            NoteResult result = NoteAnalysis.analyse(string.recording(RATE_HZ, chance).stream(), NoteSettings.STANDARD);
            countSeries(string, result);
            for (Partial p : result.partials()) {
                if (p.number() <= 5 && p.decay() instanceof PartialDecay.OneStage one) {
                    count("decay time", one.decayTimeSeconds(), string.earlySeconds());
                }
            }
            result.decay().t20().found().ifPresent(d -> count("T20", d.seconds(), string.earlySeconds()));
        }
        assertThat(counts.get("decay time")[1]).isGreaterThan(4 * TRIALS);
        check();
    }

    private void countSeries(StringNote string, NoteResult result) {
        Pitch pitch = result.pitch().found().orElseThrow();
        count("pitch", pitch.hz(), string.pitchHz());
        count("inharmonicity", result.inharmonicity().found().orElseThrow(), string.stretch());
    }

    private void count(String name, Estimate estimate, double truth) {
        int[] count = counts.computeIfAbsent(name, n -> new int[2]);
        count[0] += Math.abs(estimate.value() - truth) <= estimate.halfWidth95() ? 1 : 0;
        count[1]++;
        largest.merge(name, Math.abs(estimate.value() / truth - 1), Math::max);
    }

    private void check() {
        counts.forEach((name, count) -> System.out.printf(
                "%s: 95 %% intervals hold the truth in %.1f %% of %d, largest error %.4f %%%n",
                name, 100.0 * count[0] / count[1], count[1], 100 * largest.getOrDefault(name, 0.0)));
        counts.forEach((name, count) ->
                assertThat((double) count[0] / count[1]).as(name).isBetween(0.92, 0.98));
    }
}
