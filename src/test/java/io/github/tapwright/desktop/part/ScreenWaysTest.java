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
    void whatNamesNoCommandStaysWordForWord() {
        String words = "a sitting edited by hand; instrument 7, sitting 12";
        assertThat(ScreenWays.in(words)).isEqualTo(words);
    }
}
