package io.github.tapwright.desktop.part;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.comparison.SetUps;
import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.sitting.Conditions;
import org.junit.jupiter.api.Test;

class ScreenWaysTest {

    @Test
    void aRemedyNamesTheButtonInsteadOfTheCommand() {
        assertThat(StageClass.STRUNG.objection(Conditions.UNKNOWN).map(ScreenWays::in))
                .contains("its stage is unknown; write it down with “Correct sitting” on the Shelf");
        assertThat(ScreenWays.in(SetUps.LEAVE_OUT))
                .isEqualTo("leave one out, or correct it with “Correct sitting” on the Shelf if it is written down"
                        + " wrongly");
    }

    @Test
    void theNumbersOfACommandGoWithItBecauseTheSentenceNamesThemAlready() {
        assertThat(ScreenWays.in("sitting 5 is set aside (the cover had slipped); choose another, or take it back with"
                        + " sitting set-aside 5 --take-back"))
                .isEqualTo("sitting 5 is set aside (the cover had slipped); choose another, or take it back with"
                        + " “Use again” on the Shelf");
        assertThat(ScreenWays.in("measure its levels anew with sitting reanalyse 12; so the rest"))
                .isEqualTo("measure its levels anew with “Analyse anew” on the Shelf; so the rest");
        assertThat(ScreenWays.in("take it back with calibration withdraw 2 --take-back"))
                .isEqualTo("take it back with “Use this again” on the Workshop screen");
    }

    @Test
    void whatNamesNoCommandStaysWordForWord() {
        String words = "a sitting edited by hand; instrument 7, sitting 12";
        assertThat(ScreenWays.in(words)).isEqualTo(words);
    }
}
