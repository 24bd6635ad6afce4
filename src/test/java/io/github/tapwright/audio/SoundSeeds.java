package io.github.tapwright.audio;

import io.github.tapwright.fuzz.SeedFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Seeds of the sound files: images put together byte by byte, and the fixtures of src/test/resources/audio. */
public final class SoundSeeds {

    private static final String READ = "isReadOrRefused";
    private static final int TONE_RATE_HZ = 8000;
    private static final double TONE_SECONDS = 3.2;

    private SoundSeeds() {}

    public static void write(Path resources) throws IOException {
        wav(new SeedFolder(resources, WavFuzzTest.class, READ));
        aiff(new SeedFolder(resources, AiffFuzzTest.class, READ));
        new SeedFolder(resources, FlacFuzzTest.class, READ)
                .put("sine-16.flac", fixture("sine-16.flac"))
                .put("cut-24-96k.flac", Arrays.copyOf(fixture("sine-24-96k.flac"), 4000));
        byte[] ogg = fixture("sine.ogg");
        new SeedFolder(resources, OggFuzzTest.class, READ)
                .put("sine.ogg", ogg)
                .put("head.ogg", Arrays.copyOf(ogg, 3500));
        new SeedFolder(resources, Mp3FuzzTest.class, READ).put("frames.mp3", Arrays.copyOf(fixture("sine.mp3"), 3400));
        new SeedFolder(resources, AacFuzzTest.class, READ).put("frames.aac", Arrays.copyOf(fixture("sine.aac"), 2200));
        new SeedFolder(resources, Mp4FuzzTest.class, READ).put("sine.m4a", fixture("sine.m4a"));
        new SeedFolder(resources, CalibratorToneFuzzTest.class, "calibratesOrIsRefused")
                .put("tone.wav", tone())
                .put("sine.flac", fixture("sine-16.flac"));
    }

    private static void wav(SeedFolder folder) throws IOException {
        for (String kind : new String[] {"RIFF", "RIFX", "RF64"}) {
            WavImage image = new WavImage();
            image.kind = kind;
            image.before = image.chunk("LIST", 5, new byte[5]);
            folder.put(kind + ".wav", image.bytes());
        }
        WavImage extensible = new WavImage();
        extensible.validBits = 16;
        folder.put("extensible.wav", extensible.bytes());
        WavImage floats = new WavImage();
        floats.tag = 3;
        folder.put("float.wav", floats.samples(32, 4).sound(new byte[16]).bytes());
        WavImage companded = new WavImage();
        companded.tag = 7;
        folder.put("mu-law.wav", companded.samples(8, 1).bytes());
        WavImage stereo = new WavImage();
        stereo.channels = 2;
        folder.put("stereo-24.wav", stereo.samples(24, 3).sound(new byte[60]).bytes());
    }

    private static void aiff(SeedFolder folder) throws IOException {
        folder.put("plain.aiff", AiffImage.of("", 16, new byte[20], 10))
                .put("float.aifc", AiffImage.of("fl32", 32, new byte[40], 10))
                .put("swapped.aifc", AiffImage.of("sowt", 16, new byte[20], 10))
                .put("mu-law.aifc", AiffImage.of("ulaw", 8, new byte[20], 20));
    }

    /** As long as a calibration needs, in as few bytes as may be. */
    private static byte[] tone() {
        int length = (int) (TONE_SECONDS * TONE_RATE_HZ);
        byte[] sound = new byte[length];
        for (int n = 0; n < length; n++) {
            sound[n] = (byte) Math.round(128 + 100 * Math.sin(2 * Math.PI * 1000 * n / TONE_RATE_HZ));
        }
        WavImage image = new WavImage();
        image.rateHz = TONE_RATE_HZ;
        return image.samples(8, 1).sound(sound).bytes();
    }

    private static byte[] fixture(String name) throws IOException {
        return Files.readAllBytes(Fixtures.file(name));
    }
}
