package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** What begins as a WAV file. */
class WavFuzzTest {

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        FuzzedSound.readsOrRefuses(bytes);
    }
}
