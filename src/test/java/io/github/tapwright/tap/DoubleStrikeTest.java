package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A second contact is told by when it comes and how strong it is, with a true minus where it is weaker. */
class DoubleStrikeTest {

    @Test
    void theSecondContactIsWeakerByATrueMinus() {
        TapTrack track = TapTrack.read(
                TapScene.of(TrueMode.resonator(190, 30, 1))
                        .strikes(4, 1.1)
                        .doubleStrike(1, 0.06)
                        .build()
                        .recording()
                        .stream(),
                TapSettings.STANDARD);
        List<Rejection> rejections = StrikeSet.find(List.of(track), TapSettings.STANDARD)
                .strikes()
                .get(1)
                .rejections();

        assertThat(rejections.get(0).reason()).isEqualTo(RejectionReason.DOUBLE_STRIKE);
        assertThat(rejections.get(0).text())
                .containsPattern("second contact (59|60|61) ms later, −\\d+ dB re the first");
    }
}
