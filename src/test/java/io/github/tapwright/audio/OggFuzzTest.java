package io.github.tapwright.audio;

import com.code_intelligence.jazzer.junit.FuzzTest;

/** What begins as an Ogg Vorbis file. */
class OggFuzzTest {

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        FuzzedSound.readsOrRefuses(OggChecksums.repaired(bytes.clone()));
    }
}
