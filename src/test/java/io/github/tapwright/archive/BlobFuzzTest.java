package io.github.tapwright.archive;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.fuzz.Bounds;
import java.io.IOException;
import java.util.List;

/** Any bytes where the database keeps a curve or a digest. */
class BlobFuzzTest {

    private static final Bounds BOUNDS = Bounds.refusingWith(List.of(ArchiveException.class, IOException.class));

    @FuzzTest
    void aCurveIsReadOrRefused(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> CurveBlob.parse(bytes));
    }

    @FuzzTest
    void resonancesAreReadOrRefused(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> TapDigest.resonances(bytes));
    }

    @FuzzTest
    void thirdOctavesAreReadOrRefused(byte[] bytes) {
        BOUNDS.hold(bytes.length, () -> TapDigest.thirdOctaves(bytes));
    }
}
