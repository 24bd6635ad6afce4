package io.github.tapwright.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BodySoundTest {

    private static List<DemoSitting> sittings() {
        return DemoWorkshop.sittings();
    }

    private static DemoSitting sitting(int number) {
        return DemoWorkshop.sittings().get(number - 1);
    }

    private static double mainTopHz(int number) {
        return BodySound.mainTop(BodySound.nominalBody(sitting(number))).frequencyHz();
    }

    @ParameterizedTest
    @MethodSource("sittings")
    void staysWhereGuitarsAre(DemoSitting sitting) {
        List<BodySound.NamedMode> modes = BodySound.of(sitting).modes();
        for (int m = 1; m < modes.size(); m++) {
            assertThat(modes.get(m).mode().frequencyHz())
                    .isGreaterThan(1.02 * modes.get(m - 1).mode().frequencyHz());
        }
        assertThat(modes).allSatisfy(m -> assertThat(m.mode().q()).isBetween(18.0, 65.0));
        assertThat(modes.get(modes.size() - 1).mode().frequencyHz()).isLessThan(1020);
    }

    @Test
    void nothingButChanceLiesBetweenTheTwoSittingsThatShouldAgree() {
        assertThat(mainTopHz(5)).isCloseTo(mainTopHz(3), within(1e-6));
    }

    @Test
    void theMainTopThatMovedMovedByWhatTheStorySays() {
        assertThat(mainTopHz(12) / mainTopHz(11)).isCloseTo(1.013, within(1e-9));
    }

    @Test
    void aWetMonthLowersThePlates() {
        assertThat(mainTopHz(18) / mainTopHz(17)).isBetween(0.985, 0.992);
    }

    @Test
    void aLighterTopRadiatesMore() {
        assertThat(BodySound.of(sitting(11)).directGain())
                .isGreaterThan(1.25 * BodySound.of(sitting(3)).directGain());
    }
}
