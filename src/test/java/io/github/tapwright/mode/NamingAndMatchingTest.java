package io.github.tapwright.mode;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.statistics.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NamingAndMatchingTest {

    private static List<Resonance> resonances(double... hertzAndLevelDb) {
        List<Resonance> list = new ArrayList<>();
        for (int i = 0; i < hertzAndLevelDb.length; i += 2) {
            list.add(new Resonance(
                    Estimate.of(hertzAndLevelDb[i], 0.1),
                    Estimate.of(30, 1),
                    Estimate.of(0.3, 0.01),
                    Estimate.of(hertzAndLevelDb[i + 1], 0.5),
                    6,
                    ""));
        }
        return list;
    }

    private static List<Optional<ModeName>> names(HoleState hole, double... hertzAndLevelDb) {
        return ModeNaming.suggest(resonances(hertzAndLevelDb), hole).stream()
                .map(NamedResonance::name)
                .toList();
    }

    @Test
    void namesAPlainGuitar() {
        assertThat(names(HoleState.OPEN, 102, -8, 195, 0, 233, -12, 285, -20, 380, -18))
                .containsExactly(
                        Optional.of(ModeName.MAIN_AIR),
                        Optional.of(ModeName.MAIN_TOP),
                        Optional.of(ModeName.MAIN_BACK),
                        Optional.of(ModeName.CROSS_DIPOLE),
                        Optional.of(ModeName.LONG_DIPOLE));
    }

    @Test
    void aCoveredHoleHasNoMainAir() {
        assertThat(names(HoleState.COVERED, 102, -8, 195, 0).get(0)).isEmpty();
    }

    @Test
    void likeRivalsStayUnnamedWithTheReason() {
        List<NamedResonance> named = ModeNaming.suggest(resonances(98, -3, 110, -2, 195, 0), HoleState.OPEN);
        assertThat(named.get(0).name()).isEmpty();
        assertThat(named.get(0).reason()).contains("two resonances of like strength");
    }

    @Test
    void keysAndWordsFindTheirName() {
        for (ModeName name : ModeName.values()) {
            assertThat(ModeName.find(name.key())).contains(name);
            assertThat(ModeName.find(name.words().toUpperCase(java.util.Locale.ROOT)))
                    .contains(name);
        }
        assertThat(ModeName.find("wolf")).isEmpty();
    }

    @Test
    void matchesByNameThenNearestAndNeverAcross() {
        List<NamedResonance> first = ModeNaming.suggest(resonances(102, -8, 195, 0, 500, -20), HoleState.OPEN);
        List<NamedResonance> second =
                ModeNaming.suggest(resonances(101, -8, 215, 0, 490, -20, 640, -20), HoleState.OPEN);
        List<ResonanceMatching.Pair> pairs = ResonanceMatching.match(first, second);
        assertThat(pairs).hasSize(3);
        assertThat(pairs.get(1).second().resonance().frequencyHz().value()).isEqualTo(215);
        assertThat(ResonanceMatching.match(first, List.of())).isEmpty();
    }
}
