package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** What begins as AAC without a file around it. */
class AacFuzzTest {

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        FuzzedSound.readsOrRefuses(bytes);
    }
}
