package io.github.tapwright.audio;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Stands around a decoder and lets out nothing but good samples, notices and clear refusals.
 *
 * <p>Decoders meet damaged files and fail in their own ways. Before the first good sample that is a
 * refusal; after it, the good part is kept and the end is noticed. A sample that is no number is always a
 * refusal, because what stands around it cannot be trusted either.
 */
final class GuardedSound implements OpenedAudio {

    private final SoundDecoder decoder;
    private final List<String> notices = new ArrayList<>();
    private long samplesRead;
    private boolean ended;

    GuardedSound(SoundDecoder decoder) {
        this.decoder = decoder;
    }

    @Override
    public SoundFormat format() {
        return decoder.format();
    }

    @Override
    public SampleRate sampleRate() {
        return format().sampleRate();
    }

    @Override
    public int channelCount() {
        return format().channelCount();
    }

    @Override
    public List<String> notices() {
        List<String> all = new ArrayList<>();
        if (format().lossy()) {
            all.add(
                    "lossy: the encoder threw part of the sound away, so levels and decays are approximate; record WAV or FLAC if you can");
        }
        all.addAll(decoder.notices());
        all.addAll(notices);
        return List.copyOf(all);
    }

    @Override
    public int read(double[][] block) {
        requireShape(block);
        if (ended) {
            return 0;
        }
        int n = decodeSafely(block);
        requireNumbers(block, n);
        samplesRead += n;
        if (n == 0) {
            finish();
        }
        return n;
    }

    private void requireShape(double[][] block) {
        if (block.length != channelCount() || block[0].length == 0) {
            throw new IllegalArgumentException(
                    "a block for this recording has " + channelCount() + " channels and room for a sample");
        }
    }

    private int decodeSafely(double[][] block) {
        try {
            return decoder.decode(block);
        } catch (UnreadableRecordingException e) {
            throw e;
        } catch (IOException | RuntimeException | Error e) {
            if (samplesRead == 0) {
                throw DecoderFailures.refusal(format().container(), e);
            }
            notices.add("the file is damaged after " + heldTime() + "; what comes later could not be read");
            return 0;
        }
    }

    private void requireNumbers(double[][] block, int n) {
        for (int channel = 0; channel < block.length; channel++) {
            double[] samples = block[channel];
            for (int i = 0; i < n; i++) {
                if (!Double.isFinite(samples[i])) {
                    throw new UnreadableRecordingException("the sample at "
                            + Wording.seconds(sampleRate().seconds(samplesRead + i)) + " of channel " + (channel + 1)
                            + " is not a number; export the sound again, as 24 bit integer if you can");
                }
            }
        }
    }

    private void finish() {
        ended = true;
        if (samplesRead == 0) {
            throw new UnreadableRecordingException("the file holds no sound; record again");
        }
        decoder.promisedSamples().ifPresent(promised -> {
            if (promised != samplesRead) {
                notices.add(promiseBroken(promised));
            }
        });
    }

    private String promiseBroken(long promised) {
        long missing = promised - samplesRead;
        double promisedSeconds = sampleRate().seconds(promised);
        String promise = "the header promises " + Wording.seconds(promisedSeconds) + ", the file holds " + heldTime();
        return Math.abs(missing) < sampleRate().hertz() / 10
                ? promise + " (" + Math.abs(missing) + (missing > 0 ? " samples fewer)" : " samples more)")
                : promise;
    }

    private String heldTime() {
        return Wording.seconds(sampleRate().seconds(samplesRead));
    }

    @Override
    public void close() {
        ended = true;
        try {
            decoder.close();
        } catch (IOException | RuntimeException e) {
            // everything read was handed out already; a file opened for reading has nothing to lose
        }
    }
}
