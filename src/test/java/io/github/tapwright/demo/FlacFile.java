package io.github.tapwright.demo;

import java.io.BufferedInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import net.sourceforge.javaflacencoder.EncodingConfiguration;
import net.sourceforge.javaflacencoder.FLACEncoder;
import net.sourceforge.javaflacencoder.FLACFileOutputStream;
import net.sourceforge.javaflacencoder.StreamConfiguration;
import org.jflac.FLACDecoder;
import org.jflac.frame.Frame;

/** Mono FLAC files of 24 bits. */
final class FlacFile {

    private static final int BITS = 24;
    private static final int BLOCK = 4096;

    private FlacFile() {}

    static void write(Path path, int[] samples, int rateHz) throws IOException {
        FLACEncoder encoder = new FLACEncoder();
        encoder.setStreamConfiguration(new StreamConfiguration(1, BLOCK, BLOCK, rateHz, BITS));
        EncodingConfiguration thorough = new EncodingConfiguration();
        thorough.setSubframeType(EncodingConfiguration.SubframeType.EXHAUSTIVE);
        thorough.setMaxLPCOrder(12);
        encoder.setEncodingConfiguration(thorough);
        File file = path.toFile();
        try (FLACFileOutputStream out = new FLACFileOutputStream(file)) {
            encoder.setOutputStream(out);
            encoder.openFLACStream();
            encoder.addSamples(samples, samples.length);
            encoder.encodeSamples(encoder.samplesAvailableToEncode(), true);
        }
    }

    static int[] read(Path path) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(path))) {
            FLACDecoder decoder = new FLACDecoder(in);
            decoder.readMetadata();
            int[] samples = new int[(int) decoder.getStreamInfo().getTotalSamples()];
            int at = 0;
            while (at < samples.length) {
                Frame frame = decoder.readNextFrame();
                System.arraycopy(decoder.getChannelData()[0].getOutput(), 0, samples, at, frame.header.blockSize);
                at += frame.header.blockSize;
            }
            return samples;
        }
    }
}
