package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Naming.Suggestion;
import io.github.tapwright.sitting.Naming.Verdict;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NamingTest {

    private static final Instant NOW = Instant.parse("2026-03-14T09:00:00Z");
    private static final List<Suggestion> FOUND = List.of(
            new Suggestion(100, Optional.of(ModeName.MAIN_AIR), "lowest"),
            new Suggestion(190, Optional.of(ModeName.MAIN_TOP), "strongest"),
            new Suggestion(230, Optional.empty(), "two could be meant"));

    @Test
    void suggestionsHoldWhileTheMakerSaysNothing() {
        List<Verdict> verdicts = Naming.join(FOUND, List.of());

        assertThat(verdicts)
                .extracting(Verdict::name)
                .containsExactly(Optional.of("main air"), Optional.of("main top"), Optional.empty());
        assertThat(verdicts).extracting(Verdict::reason).containsExactly("lowest", "strongest", "two could be meant");
    }

    @Test
    void theMakersNameHoldsAndItsSuggestionElsewhereIsWithdrawn() {
        GivenName top = new GivenName(229, Optional.of("top-monopole"), NOW);

        List<Verdict> verdicts = Naming.join(FOUND, List.of(top));

        assertThat(verdicts)
                .extracting(Verdict::name)
                .containsExactly(Optional.of("main air"), Optional.empty(), Optional.of("main top"));
        assertThat(verdicts.get(1).reason()).contains("another resonance");
        assertThat(verdicts.get(2).given()).contains(top);
    }

    @Test
    void theNameSaidLastHoldsWhateverTheClockSaid() {
        GivenName late = new GivenName(100.5, Optional.of("boom"), NOW);
        GivenName early = new GivenName(99.5, Optional.of("main back"), NOW.plusSeconds(60));

        assertThat(Naming.join(FOUND, List.of(early, late)).get(0).name()).contains("boom");
        assertThat(late.mode()).isEmpty();
        assertThat(early.mode()).contains(ModeName.MAIN_BACK);
    }

    @Test
    void theMakerCanSayThatAResonanceHasNoName() {
        Verdict verdict = Naming.join(FOUND, List.of(new GivenName(100, Optional.empty(), NOW)))
                .get(0);

        assertThat(verdict.name()).isEmpty();
        assertThat(verdict.reason()).isEqualTo("the maker says it has no name");
    }

    @Test
    void aNameFarFromEveryResonanceBelongsToNone() {
        assertThat(Naming.nearest(FOUND, 100 / (1 - 0.9 * Naming.TOLERANCE))).contains(0);
        assertThat(Naming.nearest(FOUND, 100 / (1 - 1.1 * Naming.TOLERANCE))).isEmpty();
        assertThat(Naming.nearest(List.of(), 100)).isEmpty();
    }

    @Test
    void ofTwoNeighboursTheNearerIsMeant() {
        List<Suggestion> close =
                List.of(new Suggestion(200, Optional.empty(), ""), new Suggestion(202, Optional.empty(), ""));

        assertThat(Naming.nearest(close, 200.9)).contains(0);
        assertThat(Naming.nearest(close, 201.1)).contains(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesNamesWithoutAFrequency(double frequencyHz) {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new GivenName(frequencyHz, Optional.of("main air"), NOW));
    }
}
