package io.github.tapwright.audio;

import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.logging.Logger;
import net.sourceforge.jaad.aac.Decoder;

/**
 * AAC packets decoded by JAAD, whose samples are taken as they come, before it would round and clip them
 * to 16 bits.
 */
final class AacFrames implements FrameSource {

    /** JAAD's full scale. */
    private static final double SCALE = 0x1p-15;
    /** JAAD logs each oddity with a stack trace; here damage is an answer, not a log entry. */
    private static final Logger CHATTER = Logger.getLogger("jaad");

    private final AacPackets packets;
    private final Decoder decoder;
    private int rateHz;
    private int channelCount;

    AacFrames(AacPackets packets) throws IOException {
        this.packets = packets;
        this.decoder = Decoder.create(packets.configuration());
        CHATTER.setUseParentHandlers(false);
    }

    int rateHz() {
        return rateHz;
    }

    @Override
    public boolean next(DecodedFrame into) throws IOException {
        Optional<byte[]> packet = packets.next();
        if (packet.isEmpty()) {
            return false;
        }
        into.restart(channelCount);
        decoder.decodeFrame(packet.get(), (samples, length, rate) -> take(into, samples, length, rate));
        if (into.length() == 0) {
            throw new DecoderTrouble("an AAC packet gives no samples");
        }
        return true;
    }

    private void take(DecodedFrame into, List<float[]> samples, int length, int rate) {
        int heard = distinctChannels(samples);
        if (channelCount == 0) {
            channelCount = heard;
            rateHz = rate;
        }
        if (rate != rateHz || heard != channelCount) {
            throw new UnreadableRecordingException(
                    "the AAC sound changes its sample rate or channels on the way; save it as WAV");
        }
        into.restart(channelCount);
        for (int c = 0; c < channelCount; c++) {
            float[] channel = samples.get(c);
            if (channel.length != length) {
                throw new UnreadableRecordingException(
                        "the AAC sound has channels of different sample rates; save it as WAV");
            }
            into.append(c, channel, 0, length, SCALE);
        }
    }

    /** JAAD hands mono out twice, as one and the same array. */
    private static int distinctChannels(List<float[]> samples) {
        boolean twice = samples.size() == 2 && samples.get(0) == samples.get(1);
        return twice ? 1 : samples.size();
    }
}
