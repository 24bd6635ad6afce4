package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.InventedResults;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SittingComparisonTest {

    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

    @Test
    void theSameResultsDifferInNothing() {
        SittingComparison same = compare(InventedResults.result(1), InventedResults.result(1));

        assertThat(same.changes()).hasSize(3).noneMatch(c -> c.frequencyHz().differs() || c.q().differs());
        assertThat(same.onlyFirst()).isEmpty();
        assertThat(same.onlySecond()).isEmpty();
    }

    @Test
    void twoPercentDifferAndAThirdOfAPercentDoesNot() {
        assertThat(compare(InventedResults.result(1), InventedResults.result(1.02))
                        .changes())
                .allMatch(c -> c.frequencyHz().differs());
        assertThat(compare(InventedResults.result(1), InventedResults.result(1.003))
                        .changes())
                .noneMatch(c -> c.frequencyHz().differs());
    }

    @Test
    void whatHasNoPartnerStandsAlone() {
        SittingComparison nothing = compare(InventedResults.result(1), InventedResults.nothing());

        assertThat(nothing.changes()).isEmpty();
        assertThat(nothing.onlyFirst()).hasSize(3);
    }

    @Test
    void theMakersNameIsTheOneShown() {
        SittingComparison same = compare(InventedResults.result(1), InventedResults.result(1));

        assertThat(same.changes()).extracting(c -> c.name().orElse("")).contains("wolf near B flat");
    }

    private static SittingComparison compare(TapResult first, TapResult second) {
        return SittingComparison.of(sitting(1, first), sitting(2, second), SetUpSpread.USUAL);
    }

    private static Sitting sitting(long id, TapResult result) {
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48000, 1, 0, 5, List.of());
        return new Sitting(
                new SittingId(id),
                new ShopNumber("117"),
                Moment.at(NOON),
                NOON,
                Conditions.UNKNOWN,
                List.of(new KeptRecording(new Original("ab".repeat(32), 1000, "wav"), "taps.wav", facts)),
                List.of(new Analysis(1, NOON, new Findings.OfTaps(result))),
                List.of(new GivenName(231.6, Optional.of("wolf near B flat"), NOON)));
    }
}
