package io.github.tapwright.note.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.synthesis.Chance;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Notes of a run are found where they begin, and nothing else is. */
class AttackFinderTest {

    private static final double RATE_HZ = 16_000;

    /** Plucks of twelve decaying partials; the string is stopped when the next note of the run begins, or rings on. */
    private static double[] run(List<Double> onsets, double noise, boolean ringsOn, RandomGenerator chance) {
        double[] x = new double[(int) ((onsets.get(onsets.size() - 1) + 2) * RATE_HZ)];
        for (int i = 0; i < onsets.size(); i++) {
            double pitch = 82.4 * Math.pow(2, i / 12.0);
            double strength = 0.1 + 0.2 * chance.nextDouble();
            int from = (int) (onsets.get(i) * RATE_HZ);
            int to = ringsOn || i + 1 == onsets.size() ? x.length : (int) (onsets.get(i + 1) * RATE_HZ) - 200;
            for (int n = from; n < to; n++) {
                double t = (n - from) / RATE_HZ;
                double held = Math.min(1, (to - n) / (0.02 * RATE_HZ)); // a finger stops the string within 20 ms
                for (int k = 1; k <= 12; k++) {
                    x[n] += held
                            * strength
                            / k
                            * Math.exp(-t * (1 + 0.8 * k))
                            * Math.sin(2 * Math.PI * k * pitch * t + k);
                }
            }
        }
        for (int n = 0; n < x.length; n++) {
            x[n] += noise * chance.nextGaussian();
        }
        return x;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void findsEveryNoteOfARun(long seed) {
        RandomGenerator chance = Chance.seeded(seed);
        List<Double> onsets = new ArrayList<>();
        double t = 0.7;
        for (int i = 0; i < 20; i++) {
            onsets.add(t);
            t += 0.6 + 1.2 * chance.nextDouble();
        }
        List<Double> found = AttackFinder.find(run(onsets, 1e-4, seed % 2 == 0, chance), RATE_HZ);
        assertThat(found).hasSameSizeAs(onsets);
        for (int i = 0; i < onsets.size(); i++) {
            assertThat(found.get(i)).isCloseTo(onsets.get(i), within(0.012));
        }
    }

    @Test
    void aFileThatStartsOnTheNoteHasIt() {
        assertThat(AttackFinder.find(run(List.of(0.0, 1.0), 1e-5, false, Chance.seeded(3)), RATE_HZ))
                .hasSize(2)
                .first()
                .isEqualTo(0.0);
    }

    @Test
    void aRoomHasNoNotes() {
        RandomGenerator chance = Chance.seeded(4);
        double[] room = new double[(int) (10 * RATE_HZ)];
        for (int n = 0; n < room.length; n++) {
            room[n] = 0.01 * chance.nextGaussian();
        }
        assertThat(AttackFinder.find(room, RATE_HZ)).isEmpty();
        assertThat(AttackFinder.find(new double[1000], RATE_HZ)).isEmpty();
    }

    @Test
    void aSqueakBeforeThePluckIsNoNoteOfItsOwn() {
        RandomGenerator chance = Chance.seeded(5);
        double[] x = run(List.of(1.0), 1e-5, false, chance);
        for (int n = (int) (0.9 * RATE_HZ); n < 0.93 * RATE_HZ; n++) {
            x[n] += 0.004 * chance.nextGaussian();
        }
        assertThat(AttackFinder.find(x, RATE_HZ))
                .hasSize(1)
                .first()
                .satisfies(t -> assertThat(t).isCloseTo(1.0, within(0.012)));
    }
}
