package io.github.tapwright.tap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RejectionReasonTest {

    /** They stand in every archive and in the JSON scripts read: a reason more is welcome, another spelling is not. */
    private static final List<String> KEPT =
            List.of("clipped", "double strike", "too quiet", "cut off", "outlier", "set aside by the maker");

    @Test
    void theKeysAreThoseOfEveryArchiveThereIs() {
        assertThat(Arrays.stream(RejectionReason.values()).map(RejectionReason::key))
                .containsExactlyElementsOf(KEPT);
    }

    @Test
    void aReasonIsFoundByItsKeyAndByNothingElse() {
        assertThat(KEPT)
                .allSatisfy(key -> assertThat(RejectionReason.find(key).map(RejectionReason::key))
                        .contains(key));
        assertThat(RejectionReason.find("Clipped")).isEqualTo(Optional.empty());
    }
}
