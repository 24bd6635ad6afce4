package io.github.tapwright.audio;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A WAV file put together byte by byte, so that each lie of its header can be told on purpose. */
final class WavImage {

    int tag = 1;
    int channels = 1;
    int rateHz = 44100;
    int bits = 16;
    int frameBytes = 2;
    int validBits = -1;
    String kind = "RIFF";
    byte[] sound = {0, 1, 0, 2, 0, 3, 0, 4};
    long statedSoundBytes = -1;
    byte[] before = {};
    byte[] after = {};

    private ByteOrder order() {
        return kind.equals("RIFX") ? ByteOrder.BIG_ENDIAN : ByteOrder.LITTLE_ENDIAN;
    }

    WavImage samples(int sampleBits, int sampleBytes) {
        bits = sampleBits;
        frameBytes = sampleBytes * channels;
        return this;
    }

    WavImage sound(byte[] bytes) {
        sound = bytes;
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        boolean longFile = kind.equals("RF64");
        long stated = statedSoundBytes >= 0 ? statedSoundBytes : sound.length;
        out.writeBytes(letters(kind));
        out.writeBytes(int32(longFile ? -1 : 0x7FFF));
        out.writeBytes(letters("WAVE"));
        if (longFile) {
            ByteBuffer sizes = ByteBuffer.allocate(28).order(order());
            sizes.putLong(1000).putLong(stated).putLong(stated / frameBytes).putInt(0);
            out.writeBytes(chunk("ds64", 28, sizes.array()));
        }
        out.writeBytes(before);
        byte[] format = format();
        out.writeBytes(chunk("fmt ", format.length, format));
        out.writeBytes(chunk("data", longFile ? 0xFFFF_FFFFL : stated, sound));
        out.writeBytes(after);
        return out.toByteArray();
    }

    Path writeTo(Path folder) {
        try {
            return Files.write(folder.resolve("sound.wav"), bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] format() {
        boolean extensible = validBits >= 0;
        ByteBuffer format = ByteBuffer.allocate(extensible ? 40 : 16).order(order());
        format.putShort((short) (extensible ? 0xFFFE : tag))
                .putShort((short) channels)
                .putInt(rateHz);
        format.putInt(rateHz * frameBytes).putShort((short) frameBytes).putShort((short) bits);
        if (extensible) {
            format.putShort((short) 22).putShort((short) validBits).putInt(0).putInt(tag);
            format.putShort((short) 0).putShort((short) 0x10);
            format.order(ByteOrder.BIG_ENDIAN).putLong(0x8000_00AA_0038_9B71L);
        }
        return format.array();
    }

    byte[] chunk(String name, long statedBytes, byte[] body) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(letters(name));
        out.writeBytes(int32(statedBytes));
        out.writeBytes(body);
        if (body.length % 2 == 1) {
            out.write(0);
        }
        return out.toByteArray();
    }

    private byte[] int32(long value) {
        return ByteBuffer.allocate(4).order(order()).putInt((int) value).array();
    }

    private static byte[] letters(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
