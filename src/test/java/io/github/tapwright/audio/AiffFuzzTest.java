package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** What begins as an AIFF file. */
class AiffFuzzTest {

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        FuzzedSound.readsOrRefuses(bytes);
    }
}
