package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** What begins as a FLAC file. */
class FlacFuzzTest {

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        FuzzedSound.readsOrRefuses(bytes);
    }
}
